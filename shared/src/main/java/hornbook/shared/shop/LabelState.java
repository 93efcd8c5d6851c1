package hornbook.shared.shop;

/** Does the label say what is in the drawer? */
public enum LabelState {
    RIGHT,
    DRIFTED,
    NONE
}
