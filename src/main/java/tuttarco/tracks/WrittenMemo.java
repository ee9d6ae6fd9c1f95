package tuttarco.tracks;

import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.reflect.RecordComponent;
import java.util.List;

/** A memo being written. */
final class WrittenMemo implements Memo {
    private final DataOutputStream out;

    WrittenMemo(OutputStream out) {
        this.out = new DataOutputStream(out);
    }

    @Override
    public double number(double value) throws IOException {
        out.writeDouble(value);
        return value;
    }

    @Override
    public int count(int value) throws IOException {
        out.writeInt(value);
        return value;
    }

    @Override
    public boolean flag(boolean value) throws IOException {
        out.writeBoolean(value);
        return value;
    }

    @Override
    public <T> T value(Class<T> type, T value) throws IOException {
        write(value);
        return value;
    }

    private void write(Object value) throws IOException {
        if (value instanceof Double number) {
            out.writeDouble(number);
        } else if (value instanceof Integer number) {
            out.writeInt(number);
        } else if (value instanceof Boolean flag) {
            out.writeBoolean(flag);
        } else if (value instanceof Enum<?> one) {
            out.writeInt(one.ordinal());
        } else if (value instanceof List<?> list) {
            out.writeInt(list.size());
            for (Object element : list) {
                write(element);
            }
        } else if (value instanceof Record fields) {
            for (RecordComponent component : fields.getClass().getRecordComponents()) {
                write(field(fields, component));
            }
        } else {
            throw new IllegalArgumentException("a memo has no place for " + value);
        }
    }

    private static Object field(Record of, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record tells all it holds", e);
        }
    }
}
