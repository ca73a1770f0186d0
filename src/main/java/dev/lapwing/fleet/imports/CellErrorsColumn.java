package dev.lapwing.fleet.imports;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.List;

/** Keeps what is wrong with a row as JSON in one column: it is written once and read whole. */
@Converter
class CellErrorsColumn implements AttributeConverter<List<CellError>, String> {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final TypeReference<List<CellError>> LIST = new TypeReference<>() {};

    @Override
    public String convertToDatabaseColumn(List<CellError> errors) {
        try {
            return JSON.writeValueAsString(errors);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("errors cannot be written", e);
        }
    }

    @Override
    public List<CellError> convertToEntityAttribute(String column) {
        try {
            return JSON.readValue(column, LIST);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("stored errors cannot be read: " + column, e);
        }
    }
}
