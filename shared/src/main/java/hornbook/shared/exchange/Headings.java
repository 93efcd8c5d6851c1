package hornbook.shared.exchange;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How people head the columns of their lists: in English as met on shop lists, some German and French (from memory). */
final class Headings {
    private static final Map<String, List<String>> OF = Map.ofEntries(
            means(
                    "place",
                    "drawer,location,where,box,bin,position,drawer no,schublade,fach,lade,ort,tiroir,emplacement"),
            means("drawer", "place,location,where,box,bin,drawer no,schublade,fach,lade,ort,tiroir,emplacement"),
            means("label", "label as written,written,title,name,beschriftung,etikett,étiquette"),
            means("contents", "content,what is in it,contents as found,inside,inhalt,contenu"),
            means("last_looked_through", "last looked through,looked through,last checked,checked,geprüft,vérifié"),
            means("title", "part,item,description,name,what,teil,bezeichnung,artikel,pièce,désignation,article"),
            means(
                    "dimensions",
                    "size,sizes,dimension,measurements,measures,maß,maße,größe,abmessung,taille,cote,cotes"),
            means("thread", "threads,screw thread,tap,gewinde,filetage"),
            means("fits", "for,make,model,fits models,fits makes,horn,passt,für,pour"),
            means(
                    "count",
                    "qty,quantity,pieces,pcs,number,how many,stock,on hand,menge,anzahl,stück,bestand,quantité,qté,nombre"),
            means("state", "condition,new or used,zustand,état"),
            means("material", "metal,made of,werkstoff,matière"),
            means("colour", "color,finish,farbe,couleur"),
            means("note", "notes,remark,remarks,comment,comments,bemerkung,bemerkungen,notiz,remarque,remarques"),
            means("id", "no,number,no.,#,nr,nr.,n°,horn no,ticket"),
            means("make", "maker,brand,hersteller,marke,marque"),
            means("model", "type,modell,modèle"),
            means("instrument", "kind of horn,voice,horn"),
            means("serial", "serial no,serial number,s/n,sn,seriennummer,numéro de série"),
            means("owner", "customer,client,player,name,belongs to,kunde,besitzer"),
            means("horn", "instrument,horn no,horn id"),
            means("took_in", "took in,taken in,date in,in,received,date,eingang,entrée"),
            means("done", "finished,date out,out,completed,returned,fertig,ausgang,sortie"),
            means("kind", "work,kind of work,job,what,arbeit,travail"),
            means("hours", "time,hrs,h,duration,stunden,zeit,heures,temps"),
            means("job", "job no,job id,job number,ticket,no"),
            means("task", "work,what,activity,arbeit,travail"),
            means(
                    "days",
                    "lead time,lead days,days to deliver,delivery,delivery days,lieferzeit,liefertage,délai,délai jours"),
            means("packs", "pack,pack size,sold in,packung,conditionnement"),
            means("verdict", "buy again,again,rating,urteil,avis"),
            means("why", "reason,because,grund,raison"),
            means("date", "day,on,when,datum,tag,jour"),
            means("who", "by,worker,initials,name,wer"));

    /** What a job's own number is headed: the number of its horn stands in another column. */
    private static final List<String> JOB_ID = List.of("job no", "job number", "ticket", "job", "no", "no.", "#", "nr");

    /** A supplier's place is a town, and no drawer. */
    private static final Map<String, List<String>> SUPPLIER = Map.of(
            "name", List.of("supplier", "seller", "shop", "company", "firm", "lieferant", "firma", "fournisseur"),
            "place", List.of("town", "city", "where", "address", "country", "ort", "stadt", "ville", "lieu"));

    private static final Set<String> ALL = Stream.concat(OF.entrySet().stream(), SUPPLIER.entrySet().stream())
            .flatMap(entry -> Stream.concat(Stream.of(entry.getKey()), entry.getValue().stream()))
            .collect(Collectors.toUnmodifiableSet());

    private Headings() {}

    private static Map.Entry<String, List<String>> means(String field, String headings) {
        return Map.entry(field, List.of(headings.split(",")));
    }

    /** Headings that mean this field of such a list, the likeliest first. */
    static List<String> of(SheetKind kind, String field) {
        if (kind == SheetKind.SUPPLIERS && SUPPLIER.containsKey(field)) {
            return SUPPLIER.getOrDefault(field, List.of());
        }
        return kind == SheetKind.JOBS && field.equals("id") ? JOB_ID : OF.getOrDefault(field, List.of());
    }

    /** Is it a heading that we know, of whatever list? */
    static boolean known(String heading) {
        return ALL.contains(folded(heading));
    }

    static String folded(String heading) {
        String text = heading.strip().toLowerCase(Locale.ROOT);
        return text.contains("_") && !text.contains(" ") ? text : text.replaceAll("\\s+", " ");
    }
}
