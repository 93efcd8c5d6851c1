package hornbook.viewer.setting;

import hornbook.shared.setting.SettingLine;
import java.util.List;

/**
 * What the pane shows at one moment.
 *
 * @param touched name of the setting that was last written; empty before
 * @param trouble why it could not be; empty where it could
 */
record SettingView(List<SettingLine> lines, String touched, String trouble) {
    static final SettingView NOTHING = new SettingView(List.of(), "", "");

    SettingView {
        lines = List.copyOf(lines);
    }

    SettingView with(List<SettingLine> now) {
        return new SettingView(now, touched, trouble);
    }

    SettingView wrote(String name) {
        return new SettingView(lines, name, "");
    }

    SettingView troubled(String why) {
        return new SettingView(lines, touched, why);
    }
}
