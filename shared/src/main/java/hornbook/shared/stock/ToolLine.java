package hornbook.shared.stock;

import hornbook.shared.shop.ShopTool;

/** A tool as it stands in the list of a drawer. */
public record ToolLine(String id, String title, String state, String note) {
    static ToolLine of(ShopTool tool) {
        return new ToolLine(tool.id(), tool.title(), tool.state(), tool.note());
    }
}
