package hornbook.shared.shop;

/** How a lot came and what it is fit for: as made, taken from a horn, or stock to be worked. */
public enum LotState {
    NEW,
    SALVAGED,
    BLANK
}
