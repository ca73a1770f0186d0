package dev.lapwing.web;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.type.LogicalType;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;

/** Reads JSON strictly: a value of another type is refused, not bent into shape. */
@Singleton
class JsonHabits implements ObjectMapperCustomizer {
    @Override
    @SuppressWarnings("deprecation") // The builder is not available here: the framework hands over a finished mapper.
    public void customize(ObjectMapper mapper) {
        mapper.configure(MapperFeature.ALLOW_COERCION_OF_SCALARS, false);
        mapper.enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
        mapper.enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES);
        mapper.disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT);
        mapper.disable(DeserializationFeature.ADJUST_DATES_TO_CONTEXT_TIME_ZONE);
        for (var shape : new CoercionInputShape[] {
            CoercionInputShape.Integer, CoercionInputShape.Float, CoercionInputShape.Boolean
        }) {
            mapper.coercionConfigFor(LogicalType.Textual).setCoercion(shape, CoercionAction.Fail);
        }
    }
}
