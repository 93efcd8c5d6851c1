package hornbook.viewer.cli;

import com.fasterxml.jackson.annotation.JsonInclude.Include;
import hornbook.shared.measure.Length;
import hornbook.shared.measure.LengthUnit;
import java.nio.file.Path;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.cfg.EnumFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.ToStringSerializer;

/** How an answer record is written as JSON: snake_case, keys in the record's order, what is absent left out. */
final class Json {
    private Json() {}

    static JsonMapper mapper() {
        SimpleModule paths = new SimpleModule()
                .addSerializer(Path.class, new ToStringSerializer(Path.class))
                .addSerializer(Length.class, new BothUnits());
        return JsonMapper.builder()
                .addModule(paths)
                .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
                .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .enable(EnumFeature.WRITE_ENUMS_TO_LOWERCASE)
                .changeDefaultPropertyInclusion(
                        usual -> usual.withValueInclusion(Include.NON_ABSENT).withContentInclusion(Include.NON_ABSENT))
                .build();
    }

    /** A length in both units, as numbers. */
    private static final class BothUnits extends ValueSerializer<Length> {
        @Override
        public void serialize(Length length, JsonGenerator out, SerializationContext context) {
            out.writeStartObject();
            out.writeNumberProperty("mm", length.in(LengthUnit.MILLIMETRE));
            out.writeNumberProperty("inch", Math.round(length.in(LengthUnit.INCH) * 1e6) / 1e6);
            out.writeEndObject();
        }
    }
}
