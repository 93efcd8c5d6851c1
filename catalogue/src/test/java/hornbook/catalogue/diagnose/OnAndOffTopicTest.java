package hornbook.catalogue.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.entry.Catalogue;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/**
 * Sentences written for this test by one of its authors, before anything was counted: complaints as players make them with
 * the fault they mean, and words that are no complaint of a saxophone, some of them traps (a screen that is cracked). The
 * least match was chosen on the first two lists, and a dozen synonyms were added for complaints of the first; the second
 * two were written before that choice and nothing was changed for them.
 */
class OnAndOffTopicTest {
    private static final SymptomReader READER = new SymptomReader(Catalogue.shipped());

    private static final List<String> COMPLAINTS = lines("""
            it gurgles when I go down to low B flat | f-low-warble
            my low C won't come out unless I squeeze really hard | f-low-dead
            the G sharp key stays shut until I flick it | f-gs-stuck
            G# is glued down again | f-gs-stuck
            when I play A after G it cracks | f-a-to-g-break
            high notes fall down an octave | f-octave-stuck-low
            low D jumps up the octave all by itself | f-octave-jump
            middle D sounds muffled | f-stuffy-d
            the neck swivels when I move | f-tenon-loose
            I can't get the neck off anymore | f-tenon-stuck
            mouthpiece slides around on the cork | f-neck-cork
            a pad fell out in rehearsal | f-pad-dropped
            one of the pads is torn | f-torn-pad
            the pads are all hard as wood | f-hard-pads
            a spring snapped and the key just hangs there | f-spring-broken
            keys click and clatter when I play fast | f-clack
            the left stack key wobbles side to side | f-hinge-shake
            a screw keeps backing out | f-screw-backs-out
            the pearl came off my B key | f-pearl-loose
            the roller on low E flat won't turn | f-roller-stuck
            the action is slow to come back up | f-sluggish
            the keys are too hard to press down | f-spring-heavy
            the whole horn plays flat | f-tune-whole
            only the E is sharp, everything else is fine | f-tune-one
            something buzzes on low F | f-buzz
            there's a dent in the bottom bow | f-dent-bow
            I dropped it and the bell is pushed to one side | f-bell-shifted
            key guard fell off and the bumper is missing | f-guard-off
            thumb hook won't tighten | f-thumbhook-stripped
            a post broke off the body | f-post-off
            the rod is rusted solid | f-rod-frozen
            front F squeaks | f-front-f-wide
            high F sharp and E refuse to speak | f-high-e-f
            B and C are weak and airy | f-b-c-airy
            one and one B flat doesn't work | f-fork-bb-leak
            the F sharp sounds fuzzy | f-fs-leak
            there is a hiss around the side keys | f-side-leak
            water noise from the octave key | f-pip-loose
            the palm keys leak | f-palm-leak
            neck is bent down after my son sat on it | f-neck-down
            """);

    private static final List<String> NONE = lines("""
            banana
            what time is it
            my cat is sick
            the weather is nice today
            how much does it cost
            can I pay by card
            asdfgh
            xyzzy
            lorem ipsum dolor sit amet
            blue
            the quick brown fox jumps over the lazy dog
            pizza with cheese
            42
            where is the toilet
            I want to buy a clarinet
            do you sell reeds
            open on Saturdays
            who is the president
            change the oil in my car
            my car makes a noise
            the dishwasher leaks
            toothache
            my dog has fleas
            book a table for two
            train to the city
            invoice from last month
            a violin string broke
            my phone screen is cracked
            the door will not open
            the computer is slow
            piano tuning
            the drum skin is torn
            how old is my horn
            what is it worth
            is it silver or nickel
            engraving on the bell
            who made this horn
            please call me back
            thank you very much
            the bread is hard
            """);

    private static final List<String> COMPLAINTS_HELD_OUT = lines("""
            low B and B flat just warble | f-low-warble
            G sharp won't open in the morning | f-gs-stuck
            my neck wobbles from side to side | f-tenon-loose
            cork on the neck is too thin, mouthpiece falls off | f-neck-cork
            side B flat key leaks | f-side-leak
            the low E flat key is stuck | f-roller-stuck
            one key comes up slowly | f-sluggish
            pad keeps sticking | f-sticky-pad
            octave key won't go up, I get the low note | f-octave-stuck-low
            right hand stack feels bent after a fall | f-body-bent
            metal clack on every F | f-clack
            spring came off its post | f-spring-slipped
            pads look swollen and don't close in front | f-swollen-pad
            hinge screw will not come out | f-rod-frozen
            screwdriver slips, slot is chewed up | f-slot-chewed
            nothing comes out below F | f-low-dead
            motorboating on low B | f-low-motorboat
            high E and F don't come | f-high-e-f
            it plays sharp everywhere | f-tune-whole
            guard is loose and rattles | f-guard-off
            """);

    private static final List<String> NONE_HELD_OUT = lines("""
            apple
            tomorrow afternoon
            the bus was late
            coffee with milk
            where did I put my glasses
            my guitar needs new strings
            the washing machine rattles
            the kitchen tap drips
            can you lend me ten
            trumpet valves are stuck
            a good price please
            write a poem
            my back hurts
            snow in the mountains
            does it need a case
            what a lovely shop
            two tickets
            the car window is stuck
            test
            is the lacquer original
            """);

    private static List<String> lines(String block) {
        return block.lines().map(String::strip).toList();
    }

    private static boolean known(String line) {
        String[] parts = line.split("\\s*\\|\\s*");
        return READER.read(parts[0]).keySet().stream().limit(2).toList().contains(parts[1]);
    }

    private static boolean refused(String words) {
        return READER.read(words).isEmpty();
    }

    private static List<String> but(List<String> lines, Predicate<String> which) {
        return lines.stream().filter(which.negate()).toList();
    }

    @Test
    void complaintsAreKnownAndTheRestIsRefused() {
        assertThat(but(COMPLAINTS, OnAndOffTopicTest::known))
                .as("complaints not known")
                .hasSizeLessThanOrEqualTo(2);
        assertThat(but(NONE, OnAndOffTopicTest::refused))
                .as("taken for a complaint")
                .hasSizeLessThanOrEqualTo(4);
    }

    @Test
    void soAreSentencesHeldOut() {
        assertThat(but(COMPLAINTS_HELD_OUT, OnAndOffTopicTest::known))
                .as("complaints not known")
                .hasSizeLessThanOrEqualTo(4);
        assertThat(but(NONE_HELD_OUT, OnAndOffTopicTest::refused))
                .as("taken for a complaint")
                .hasSizeLessThanOrEqualTo(1);
    }

    @Test
    void aWordThatIsHalfOfASynonymIsNoSymptom() {
        assertThat(READER.read("banana")).isEmpty();
        assertThat(READER.nearest("banana")).isNotEmpty();
        assertThat(READER.read("body banana").keySet()).first().isEqualTo("f-body-bent");
    }

    /** What is refused names what was perhaps meant: of a complaint its fault is among the three. */
    @Test
    void refusedComplaintsFindTheirSymptomAmongTheNearest() {
        List<String> lost = COMPLAINTS.stream()
                .filter(line -> refused(line.split("\\|")[0]))
                .filter(line -> !READER.nearest(line.split("\\|")[0])
                        .contains(Catalogue.shipped()
                                .faults()
                                .get(line.split("\\|")[1].strip())
                                .title()))
                .toList();
        assertThat(lost).isEmpty();
    }
}
