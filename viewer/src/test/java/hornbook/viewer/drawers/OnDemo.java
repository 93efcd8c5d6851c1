package hornbook.viewer.drawers;

import hornbook.viewer.hand.DemoHands;
import hornbook.viewer.hand.HandModel;
import hornbook.viewer.hand.Pull;
import hornbook.viewer.tools.ToolsModel;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;

/** The view models of the screen Drawers over a shop, everything at once on one thread. */
record OnDemo(DrawersModel drawers, HandModel hand, DeskModel desk, ToolsModel tools) {
    static OnDemo of(Workshop shop) {
        HandModel hand = new HandModel(Work.atOnce(), DemoHands.of(shop));
        Pull pull = new Pull(shop.stock(), shop.openJobs());
        DeskModel desk = new DeskModel(
                Work.atOnce(),
                shop.cabinetBook(),
                shop.placeBook(),
                new LabelPrint(shop.stock(), shop.books().folder()));
        return new OnDemo(
                new DrawersModel(Work.atOnce(), shop.furniture(), pull, hand),
                hand,
                desk,
                new ToolsModel(Work.atOnce(), shop.tools(), shop.toolBook()));
    }

    DrawersScreen screen() {
        return new DrawersScreen(drawers, hand, desk, tools, () -> {});
    }
}
