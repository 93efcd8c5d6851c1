package hornbook.catalogue.entry;

/** What a model says of one trait. */
public sealed interface Distribution permits Shares, Normal {}
