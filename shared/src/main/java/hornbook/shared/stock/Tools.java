package hornbook.shared.stock;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import hornbook.shared.shop.ShopTool;
import hornbook.shared.shop.ToolMember;
import hornbook.shared.store.Books;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Answers where each tool of the shop is, and what is missing from a set. */
public final class Tools {
    private static final Pattern GAUGE = Pattern.compile("gauge|caliper|micrometer|rule|pin");

    private final Books books;
    private final Stock stock;

    public Tools(Books books) {
        this.books = books;
        this.stock = new Stock(books);
    }

    /** Every tool, in the order in which they were entered. */
    public List<ToolCard> all() {
        Map<String, List<MemberLine>> members = books.all(ToolMember.class).stream()
                .collect(groupingBy(ToolMember::set, mapping(MemberLine::of, toList())));
        return books.all(ShopTool.class).stream()
                .map(tool -> card(tool, members.getOrDefault(tool.id(), List.of())))
                .toList();
    }

    /** Those that a size is read with. */
    public List<ToolCard> gauges() {
        return all().stream()
                .filter(tool ->
                        !tool.errorMm().isBlank() || GAUGE.matcher(tool.id()).find())
                .toList();
    }

    /** The tool of that number. */
    public Optional<ToolCard> tool(String id) {
        return books.find(ShopTool.class, id)
                .map(tool -> card(
                        tool,
                        books.where(ToolMember.class, "set", id).stream()
                                .map(MemberLine::of)
                                .toList()));
    }

    private ToolCard card(ShopTool tool, List<MemberLine> members) {
        Optional<DrawerCard> place = stock.placeOfTool(tool.id());
        return new ToolCard(
                tool.id(),
                tool.title(),
                place.map(DrawerCard::id).orElse(null),
                place.map(DrawerCard::label).orElse(""),
                place.map(DrawerCard::where).orElse(""),
                tool.serves(),
                tool.state(),
                tool.errorMm(),
                tool.errorChecked(),
                tool.note(),
                members);
    }
}
