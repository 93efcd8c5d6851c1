package hornbook.indexer.fit;

import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.Drawer;
import hornbook.shared.shop.Place;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.shop.Supplier;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.shop.ToolMember;
import hornbook.shared.store.View;

/** What of the shop's books bears on a plan besides the lots: tools, drawers, its own clock, what is against a lot. */
record ShopFloor(ShopRack rack, Places places, Minutes minutes, Condition condition) {
    static ShopFloor of(View view, SizeReader reader, Threads threads) {
        return new ShopFloor(
                new ShopRack(view.all(ShopTool.class), view.all(ToolMember.class), reader, threads),
                new Places(view.all(Drawer.class), view.all(Place.class)),
                OwnMinutes.of(view.all(TaskTime.class)),
                new Condition(view.all(Supplier.class)));
    }
}
