package hornbook.shared.shop;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The components of a record as columns of text: written to cells and read back from them. */
public final class Columns<T extends ShopRecord> {
    private final List<Column> columns;
    private final List<String> names;
    private final Constructor<T> constructor;

    private Columns(List<Column> columns, Constructor<T> constructor) {
        this.columns = columns;
        this.names = columns.stream().map(Column::name).toList();
        this.constructor = constructor;
    }

    static <T extends ShopRecord> Columns<T> of(Class<T> type) {
        RecordComponent[] parts = type.getRecordComponents();
        Class<?>[] types = Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            return new Columns<>(Arrays.stream(parts).map(Column::of).toList(), type.getDeclaredConstructor(types));
        } catch (NoSuchMethodException e) {
            throw new AssertionError(e);
        }
    }

    public List<Column> list() {
        return columns;
    }

    public List<String> names() {
        return names;
    }

    /** The cells of a record, empty where a part is absent. */
    public List<String> cells(T value) {
        List<String> cells = new ArrayList<>(columns.size());
        for (Column column : columns) {
            cells.add(column.written(value));
        }
        return cells;
    }

    /**
     * A record from its cells.
     *
     * @throws BadCell naming the column that cannot be read
     * @throws BadInput where the cells do not go together
     */
    public T record(List<String> cells) {
        @Nullable Object[] parts = new @Nullable Object[columns.size()];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = columns.get(i).read(cells.get(i));
        }
        try {
            return constructor.newInstance(parts);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof BadInput bad) {
                throw bad;
            }
            throw new IllegalStateException(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
