package hornbook.catalogue.entry;

import java.util.List;

/** A kind of part, tool or supply: what a drawer can hold. */
public sealed interface Thing extends Entry permits Part, Tool, Supply {
    /** Other names it goes by in the trade. */
    List<String> otherNames();
}
