package weekwright.model.document;

import com.fasterxml.jackson.annotation.JsonAnySetter;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonValue;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Moment;

/**
 * How a record looks in a document: one field a component, in their order, under the name that Jackson's annotations
 * give it. Reading and writing by these few lines starts half a second sooner than a whole data-binding library.
 */
final class RecordShape {
    /** Values that a document writes as text. */
    private static final Map<Class<?>, Function<String, Object>> SCALARS = scalars();

    private static final Map<Class<?>, RecordShape> SHAPES = new ConcurrentHashMap<>();
    private static final Map<Class<?>, Map<String, Object>> CONSTANTS = new ConcurrentHashMap<>();

    private static final Map<Enum<?>, String> WRITTEN = new ConcurrentHashMap<>();

    private final Constructor<?> constructor;
    private final List<Component> components;

    /**
     * One field.
     *
     * @param name name in documents
     * @param type declared type
     * @param others whether it takes the fields that no other component names
     * @param accessor reads it
     */
    record Component(String name, Type type, boolean others, Method accessor) {}

    private RecordShape(Class<?> type) {
        RecordComponent[] declared = type.getRecordComponents();
        components = Arrays.stream(declared).map(RecordShape::component).toList();
        try {
            constructor = type.getDeclaredConstructor(
                    Arrays.stream(declared).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(type.getSimpleName() + " has no canonical constructor", e);
        }
    }

    static RecordShape of(Class<?> type) {
        return SHAPES.computeIfAbsent(type, RecordShape::new);
    }

    private static Component component(RecordComponent component) {
        JsonProperty property = component.getAccessor().getAnnotation(JsonProperty.class);
        String name = property == null ? component.getName() : property.value();
        return new Component(name, component.getGenericType(), takesOthers(component), component.getAccessor());
    }

    private static boolean takesOthers(RecordComponent component) {
        try {
            return component
                    .getDeclaringRecord()
                    .getDeclaredField(component.getName())
                    .isAnnotationPresent(JsonAnySetter.class);
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException("every record component has a field", e);
        }
    }

    private static Map<Class<?>, Function<String, Object>> scalars() {
        Map<Class<?>, Function<String, Object>> scalars = new LinkedHashMap<>();
        scalars.put(String.class, text -> text);
        scalars.put(LocalDate.class, LocalDate::parse);
        scalars.put(Moment.class, Moment::parse);
        scalars.put(ClockTime.class, ClockTime::parse);
        scalars.put(ZoneId.class, ZoneId::of);
        return scalars;
    }

    List<Component> components() {
        return components;
    }

    /** A record of these values. */
    Object make(List<@Nullable Object> values) {
        try {
            return constructor.newInstance(values.toArray());
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(constructor.getName() + " refused what the checks let pass", e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(constructor.getName() + " cannot be made", e);
        }
    }

    static @Nullable Object get(Component component, Object record) {
        try {
            return component.accessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component.name() + " cannot be read", e);
        }
    }

    /** How a value of this class is read from text, or null where it is none that is. */
    static @Nullable Function<String, Object> scalar(Class<?> type) {
        if (type.isEnum()) {
            return text -> constant(type, text);
        }
        return SCALARS.get(type);
    }

    private static Object constant(Class<?> type, String text) {
        Object constant =
                CONSTANTS.computeIfAbsent(type, RecordShape::constants).get(text);
        if (constant == null) {
            throw new IllegalStateException("\"" + text + "\" is no " + type.getSimpleName());
        }
        return constant;
    }

    private static Map<String, Object> constants(Class<?> type) {
        Map<String, Object> constants = new LinkedHashMap<>();
        for (Object constant : type.getEnumConstants()) {
            constants.put(written(constant), constant);
        }
        return constants;
    }

    /** The written form of a value that is text in documents. */
    static String written(Object value) {
        return value instanceof Enum<?> constant
                ? WRITTEN.computeIfAbsent(constant, RecordShape::written)
                : value.toString();
    }

    private static String written(Enum<?> constant) {
        return Arrays.stream(constant.getDeclaringClass().getDeclaredMethods())
                .filter(method -> method.isAnnotationPresent(JsonValue.class))
                .findFirst()
                .map(method -> written(method, constant))
                .orElse(constant.name());
    }

    private static String written(Method method, Enum<?> constant) {
        try {
            return String.valueOf(method.invoke(constant));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(constant.name() + " has no written form", e);
        }
    }

    /** The names that components claim for themselves. */
    List<String> names() {
        List<String> names = new ArrayList<>();
        components.stream().filter(component -> !component.others()).forEach(component -> names.add(component.name()));
        return names;
    }
}
