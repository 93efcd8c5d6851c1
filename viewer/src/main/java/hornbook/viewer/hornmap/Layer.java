package hornbook.viewer.hornmap;

/** What is read and entered on the map at one time. */
enum Layer {
    PADS("Pads", "Pad size, mm"),
    INSIDES("Cup inside", "Inside diameter, mm"),
    FOUND("As found", "Opening as found, mm"),
    LEFT("As left", "Opening as left, mm"),
    LEAKS("Leaks", "Leak seen: none, hair or gap"),
    KEYS("Keys", "");

    private final String title;
    private final String asks;

    Layer(String title, String asks) {
        this.title = title;
        this.asks = asks;
    }

    String title() {
        return title;
    }

    /** What a person is asked for; empty where that depends. */
    String asks() {
        return asks;
    }
}
