package hornbook.shared.shop;

/** A record of the shop's books. Its components are, in order and by name, the columns of its exchange file. */
public sealed interface ShopRecord
        permits Cabinet,
                Drawer,
                Finding,
                Horn,
                Job,
                Lot,
                Movement,
                OpenOrder,
                PadUsed,
                PartUsed,
                Place,
                ShopTool,
                Supplier,
                TaskTime,
                ToolMember,
                TrialHorn {

    /** Unique among records of the same kind, never reused. */
    String id();
}
