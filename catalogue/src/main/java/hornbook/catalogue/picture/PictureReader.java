package hornbook.catalogue.picture;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads one picture file and holds it to the subset; whatever leaves it ends in {@link OutsideSubset}. */
final class PictureReader {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String KEEP = "keep to what SUBSET.md allows";

    private final String file;
    private final XMLStreamReader xml;
    private final List<Shape> shapes = new ArrayList<>();
    private String alt = "";
    private int depth;

    private PictureReader(String file, XMLStreamReader xml) {
        this.file = file;
        this.xml = xml;
    }

    /**
     * Reads a picture.
     *
     * @param file its name, for messages
     * @throws OutsideSubset naming file, line and fault
     */
    static Picture read(String file, String trait, String value, InputStream in) {
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            return new PictureReader(file, factory.createXMLStreamReader(in, "UTF-8")).picture(trait, value);
        } catch (XMLStreamException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
            throw new OutsideSubset(file, line, "not well-formed XML", "open it in a browser and mend it");
        }
    }

    private Picture picture(String trait, String value) throws XMLStreamException {
        next();
        double[] box = root();
        boolean open = true;
        while (open) {
            switch (next()) {
                case XMLStreamConstants.START_ELEMENT -> element();
                case XMLStreamConstants.END_ELEMENT -> open = depth-- > 0;
                default -> throw fault("something after the last element", KEEP);
            }
        }
        if (alt.isEmpty() || shapes.isEmpty()) {
            throw new OutsideSubset(file, 0, alt.isEmpty() ? "no title" : "no shape", KEEP);
        }
        return new Picture(trait, value, alt, box[0], box[1], shapes);
    }

    /** The next event that is not white space. */
    private int next() throws XMLStreamException {
        while (true) {
            int event = xml.next();
            if (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.SPACE) {
                if (!xml.getText().isBlank()) {
                    throw fault("text outside the title", "take it out");
                }
            } else if (event == XMLStreamConstants.START_ELEMENT || event == XMLStreamConstants.END_ELEMENT) {
                return event;
            } else {
                throw fault("a comment, DOCTYPE or processing instruction", "take it out");
            }
        }
    }

    private double[] root() {
        Map<String, String> attributes = attributes();
        if (!xml.getLocalName().equals("svg") || !SVG.equals(xml.getNamespaceURI()) || attributes.size() != 1) {
            throw fault("the root is not an svg with a viewBox alone", KEEP);
        }
        List<Double> box = numbers(attributes.getOrDefault("viewBox", ""));
        if (box.size() != 4 || box.get(0) != 0 || box.get(1) != 0 || box.get(2) <= 0 || box.get(3) <= 0) {
            throw fault("the viewBox is not 0 0 width height", KEEP);
        }
        return new double[] {box.get(2), box.get(3)};
    }

    private void element() throws XMLStreamException {
        String name = xml.getLocalName();
        if (!SVG.equals(xml.getNamespaceURI())) {
            throw fault("<" + name + "> of another namespace", KEEP);
        }
        if (name.equals("title") && alt.isEmpty() && shapes.isEmpty() && depth == 0) {
            title();
        } else if (alt.isEmpty()) {
            throw fault("<" + name + "> before a title that says something", "put <title> first");
        } else if (name.equals("g")) {
            bare();
            depth++;
        } else {
            shapes.add(shape(name));
        }
    }

    private void title() throws XMLStreamException {
        bare();
        try {
            alt = xml.getElementText().strip();
        } catch (XMLStreamException e) {
            throw fault("the title holds more than text", KEEP);
        }
    }

    private void bare() {
        if (xml.getAttributeCount() > 0) {
            throw fault("<" + xml.getLocalName() + "> has an attribute", "take it out");
        }
    }

    private Shape shape(String name) throws XMLStreamException {
        ShapeKind kind = ShapeKind.of(name).orElseThrow(() -> fault("<" + name + "> is not of the subset", KEEP));
        Map<String, String> attributes = attributes();
        Pen pen = Pen.of(attributes.getOrDefault("class", ""))
                .orElseThrow(() -> fault("<" + name + "> has no class of the list", "give it one of line to ghost"));
        kind.required().stream()
                .filter(a -> !attributes.containsKey(a))
                .findFirst()
                .ifPresent(a -> {
                    throw fault("<" + name + "> has no " + a, "give it one");
                });
        attributes.keySet().stream()
                .filter(a -> !a.equals("class") && !a.equals("id") && !kind.knows(a))
                .findFirst()
                .ifPresent(a -> {
                    throw fault("<" + name + "> has an attribute " + a, "take it out");
                });
        Shape shape = new Shape(kind, pen, attributes.getOrDefault("id", ""), path(kind, attributes));
        if (next() != XMLStreamConstants.END_ELEMENT) {
            throw fault("<" + name + "> holds another element", "take it out");
        }
        return shape;
    }

    private Map<String, String> attributes() {
        Map<String, String> attributes = new LinkedHashMap<>();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            String prefix = xml.getAttributePrefix(i);
            attributes.put(
                    (prefix == null || prefix.isEmpty() ? "" : prefix + ":") + xml.getAttributeLocalName(i),
                    xml.getAttributeValue(i));
        }
        return attributes;
    }

    private String path(ShapeKind kind, Map<String, String> attributes) {
        try {
            return Geometry.path(kind, attributes);
        } catch (IllegalArgumentException e) {
            throw fault("<" + kind.word() + ">: " + e.getMessage(), KEEP);
        }
    }

    private List<Double> numbers(String text) {
        try {
            return PathData.numbers(text);
        } catch (IllegalArgumentException e) {
            throw fault("viewBox: " + e.getMessage(), KEEP);
        }
    }

    private OutsideSubset fault(String why, String whatToDo) {
        return new OutsideSubset(file, xml.getLocation().getLineNumber(), why, whatToDo);
    }
}
