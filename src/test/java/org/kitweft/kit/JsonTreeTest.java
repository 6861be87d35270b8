package org.kitweft.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTreeTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{}",
                "[]",
                "{\"a\":[1,-2.5e3,3000000000,123456789012345678901234567890,true,false,null,\"é\"]}",
                "[{\"b\":{\"c\":[[]]}},0]",
                "7"
            })
    void theTreeIsThatOfAnObjectMapper(String json) throws IOException {
        assertThat(JsonTree.read(json)).isEqualTo(new ObjectMapper().readTree(json));
    }

    @Test
    void kitFilesToo() throws IOException {
        for (String name : BuiltInKits.names()) {
            String json = Files.readString(Path.of("shared", "kits", name + ".json"));
            assertThat(JsonTree.read(json)).isEqualTo(new ObjectMapper().readTree(json));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "[1,", "{\"a\":}", "{\"a\" 1}", "1 2", "]", "nul", "{}x"})
    void whatIsNotOneWholeValueIsRefused(String json) {
        assertThatThrownBy(() -> JsonTree.read(json)).isInstanceOf(JsonProcessingException.class);
    }
}
