package tuttarco.tracks;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A memo being read. What can't have been written is an {@link IOException}. */
final class ReadMemo implements Memo {
    private final DataInputStream in;

    ReadMemo(InputStream in) {
        this.in = new DataInputStream(in);
    }

    @Override
    public double number(double value) throws IOException {
        return in.readDouble();
    }

    @Override
    public int count(int value) throws IOException {
        int count = in.readInt();
        if (count < 0) {
            throw new IOException("fewer than none: " + count);
        }
        return count;
    }

    @Override
    public boolean flag(boolean value) throws IOException {
        return in.readBoolean();
    }

    @Override
    public <T> T value(Class<T> type, T value) throws IOException {
        return type.cast(read(type));
    }

    private Object read(Type type) throws IOException {
        if (type instanceof ParameterizedType list && list.getRawType() == List.class) {
            return list(list.getActualTypeArguments()[0]);
        }
        if (type == double.class || type == Double.class) {
            return in.readDouble();
        }
        if (type == int.class || type == Integer.class) {
            return in.readInt();
        }
        if (type == boolean.class || type == Boolean.class) {
            return in.readBoolean();
        }
        if (type instanceof Class<?> one && one.isEnum()) {
            return constant(one.getEnumConstants());
        }
        if (type instanceof Class<?> one && one.isRecord()) {
            return fields(one);
        }
        throw new IllegalArgumentException("a memo has no place for " + type);
    }

    private List<Object> list(Type type) throws IOException {
        int n = count(0);
        List<Object> list = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            list.add(read(type));
        }
        return list;
    }

    private Object constant(Object[] constants) throws IOException {
        int ordinal = count(0);
        if (ordinal >= constants.length) {
            throw new IOException("no such constant: " + ordinal);
        }
        return constants[ordinal];
    }

    private Object fields(Class<?> type) throws IOException {
        RecordComponent[] components = type.getRecordComponents();
        Object[] fields = new Object[components.length];
        for (int i = 0; i < fields.length; i++) {
            fields[i] = read(components[i].getGenericType());
        }
        try {
            Constructor<?> canonical = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            canonical.setAccessible(true);
            return canonical.newInstance(fields);
        } catch (InvocationTargetException e) {
            throw new IOException("not what was written: " + Arrays.toString(fields), e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record can be made of all it holds", e);
        }
    }
}
