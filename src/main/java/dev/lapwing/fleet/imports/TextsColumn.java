package dev.lapwing.fleet.imports;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.List;

/** Keeps a list of texts as JSON in one column: it is written once and read whole. */
@Converter
class TextsColumn implements AttributeConverter<List<String>, String> {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final TypeReference<List<String>> LIST = new TypeReference<>() {};

    @Override
    public String convertToDatabaseColumn(List<String> texts) {
        try {
            return JSON.writeValueAsString(texts);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("texts cannot be written", e);
        }
    }

    @Override
    public List<String> convertToEntityAttribute(String column) {
        try {
            return JSON.readValue(column, LIST);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("stored texts cannot be read: " + column, e);
        }
    }
}
