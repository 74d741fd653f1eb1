package rindward.controller.link;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.KeyDeserializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import rindward.controller.alarm.AlarmId;

/**
 * A report as one line of JSON between two processes of the same version: exactly the records that
 * are in memory. A line of another version is told apart from one that is spoilt.
 */
final class ReportJson {
  /** Raised whenever a record that is told of changes; both processes come from one jar. */
  static final int VERSION = 1;

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .addModule(new JavaTimeModule())
          .addModule(
              new SimpleModule()
                  .addKeySerializer(AlarmId.class, new AlarmKey())
                  .addKeyDeserializer(AlarmId.class, new AlarmOfKey()))
          .visibility(PropertyAccessor.ALL, Visibility.NONE)
          .visibility(PropertyAccessor.FIELD, Visibility.ANY)
          .visibility(PropertyAccessor.CREATOR, Visibility.ANY)
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .build();

  private ReportJson() {}

  private record Line(int version, ControlReport report) {}

  /** A line was written by another version of the program. */
  static final class OtherVersion extends IOException {
    private static final long serialVersionUID = 1;

    OtherVersion(int version) {
      super("its reports are of version " + version + ", this page reads " + VERSION);
    }
  }

  /** Returns the line, its end included. */
  static byte[] write(ControlReport report) {
    try {
      return (MAPPER.writeValueAsString(new Line(VERSION, report)) + "\n")
          .getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a report cannot be written", e);
    }
  }

  /**
   * Reads a line.
   *
   * @throws OtherVersion when another version wrote it
   * @throws IOException when it is none of ours
   */
  static ControlReport read(byte[] line, int length) throws IOException {
    JsonNode tree = MAPPER.readTree(line, 0, length);
    int version = tree == null ? 0 : tree.path("version").asInt(0);
    if (version != VERSION) {
      throw new OtherVersion(version);
    }
    return MAPPER.treeToValue(tree.path("report"), ControlReport.class);
  }

  private static final class AlarmKey extends JsonSerializer<AlarmId> {
    @Override
    public void serialize(AlarmId id, JsonGenerator out, SerializerProvider how)
        throws IOException {
      out.writeFieldName(id.key());
    }
  }

  private static final class AlarmOfKey extends KeyDeserializer {
    @Override
    public Object deserializeKey(String key, DeserializationContext how) throws IOException {
      return AlarmId.of(key).orElseThrow(() -> new IOException("no alarm is called '" + key + "'"));
    }
  }
}
