package dev.lapwing.returns.storage;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.reading.Evidence;
import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.List;

/** Keeps the evidence of a reading as JSON in one column: it is written once and read whole. */
@Converter
class EvidenceColumn implements AttributeConverter<List<Evidence>, String> {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final TypeReference<List<Evidence>> LIST = new TypeReference<>() {};

    @Override
    public String convertToDatabaseColumn(List<Evidence> evidence) {
        try {
            return JSON.writeValueAsString(evidence);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("evidence cannot be written", e);
        }
    }

    @Override
    public List<Evidence> convertToEntityAttribute(String column) {
        try {
            return JSON.readValue(column, LIST);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("stored evidence cannot be read: " + column, e);
        }
    }
}
