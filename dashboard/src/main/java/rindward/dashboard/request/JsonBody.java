package rindward.dashboard.request;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.type.LogicalType;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Reads the body of a change: bounded, strict, and refused with a sentence that names the field. A
 * field is needed unless its record component says that it may be null.
 */
public final class JsonBody {

  /** What the pages send is far below; a longer body is refused before anybody reads it. */
  public static final int MAX_BYTES = 64 * 1024;

  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .addModule(new JavaTimeModule())
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
          .withCoercionConfig(
              LogicalType.Textual,
              config ->
                  config
                      .setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                      .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                      .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail))
          .build();

  private JsonBody() {}

  /**
   * Returns the body as a record of that type. A component that the body lacks is null; the
   * record's own constructor refuses what it cannot do without, see {@link #needed}.
   *
   * @throws BadRequestResponse when it is not that
   */
  public static <T> T read(Context ctx, Class<T> type) {
    byte[] bytes = ctx.bodyAsBytes();
    try {
      T read = JSON.readValue(bytes, type);
      if (read == null) {
        throw new BadRequestResponse("The body was null but it must be a JSON object.");
      }
      return read;
    } catch (UnrecognizedPropertyException e) {
      throw new BadRequestResponse(path(e) + " is not known here.");
    } catch (MismatchedInputException e) {
      throw new BadRequestResponse(path(e) + " is missing or of the wrong type.");
    } catch (JsonMappingException e) {
      if (e.getCause() instanceof IllegalArgumentException refused) {
        throw new BadRequestResponse(String.valueOf(refused.getMessage()));
      }
      throw new BadRequestResponse(path(e) + " cannot be understood.");
    } catch (JacksonException e) {
      throw new BadRequestResponse("The body is not well-formed JSON.");
    } catch (IOException e) {
      throw new BadRequestResponse("The body could not be read to its end.");
    }
  }

  /**
   * Returns the body by which a change sent twice is known to be the same: without how long ago it
   * was, which grows while a phone waits for the network.
   */
  static String contentOf(Context ctx) {
    byte[] bytes = ctx.bodyAsBytes();
    try {
      if (JSON.readTree(bytes) instanceof ObjectNode change) {
        change.remove("agoSeconds");
        return change.toString();
      }
    } catch (IOException e) {
      // Whoever reads it says so.
    }
    return new String(bytes, StandardCharsets.UTF_8);
  }

  /**
   * Returns a text that is there, for the constructors of request records.
   *
   * @throws IllegalArgumentException naming the field, when it is missing, or longer than {@code
   *     most} characters
   */
  public static String needed(@Nullable String text, String field, int most) {
    if (text == null) {
      throw new IllegalArgumentException(field + " was missing but it must be there.");
    }
    if (text.length() > most) {
      throw new IllegalArgumentException(
          field
              + " was "
              + text.length()
              + " characters long but it must be at most "
              + most
              + ".");
    }
    return text;
  }

  private static String path(JsonMappingException e) {
    List<JsonMappingException.Reference> path = e.getPath();
    String names =
        path.stream()
            .map(r -> r.getFieldName() == null ? "[" + r.getIndex() + "]" : r.getFieldName())
            .collect(Collectors.joining("."));
    String shown = names.length() > 60 ? names.substring(0, 60) + "..." : names;
    return shown.isEmpty() ? "The body" : "The field " + shown;
  }
}
