package hornbook.shared.exchange;

import hornbook.shared.shop.Contact;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.PersonCode;
import hornbook.shared.store.View;
import hornbook.shared.store.Writing;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Owners go by a code; a name on a list becomes a contact, which does not leave the books unasked. */
final class Owners {
    private final Map<String, String> byName = new HashMap<>();
    private final Set<String> codes = new HashSet<>();
    private int last;

    Owners(View view) {
        for (Contact contact : view.all(Contact.class)) {
            byName.put(contact.name(), contact.owner());
            codes.add(contact.owner());
        }
        for (Horn horn : view.all(Horn.class)) {
            if (horn.ownerCode() != null) {
                codes.add(horn.ownerCode());
            }
        }
    }

    @Nullable
    String code(Writing writing, String written) {
        if (written.isEmpty()) {
            return null;
        }
        return PersonCode.is(written) ? written : byName.computeIfAbsent(written, name -> made(writing, name));
    }

    private String made(Writing writing, String name) {
        String code;
        do {
            code = String.format("O-%03d", ++last);
        } while (!codes.add(code));
        writing.put(new Contact(code, name, ""));
        return code;
    }
}
