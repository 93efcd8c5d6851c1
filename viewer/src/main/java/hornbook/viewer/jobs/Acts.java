package hornbook.viewer.jobs;

import java.util.Map;

/** Acts that go about one thing: how each begins. */
public interface Acts {
    Map<Act, Begin> begun();
}
