package hornbook.shared.shop;

/** A record of the shop's books. Its components are, in order and by name, the columns of its exchange file. */
public sealed interface ShopRecord
        permits Cabinet,
                Consent,
                Contact,
                Drawer,
                Finding,
                Horn,
                Job,
                Lot,
                MapRow,
                Movement,
                OpenOrder,
                PadUsed,
                PartUsed,
                Photo,
                Place,
                PlannedTask,
                RunningClock,
                ShopTool,
                Supplier,
                TakenDown,
                TaskTime,
                Timer,
                ToolMember,
                TrialHorn,
                Whereabouts {

    /** Unique among records of the same kind, never reused. */
    String id();
}
