package rindward.dashboard;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/**
 * The one body of every error response: a problem detail of RFC 9457.
 *
 * @param type {@code about:blank}, which says that the title is the status's own phrase
 * @param title the status in words
 * @param status the HTTP status code
 * @param detail a sentence on what was wrong with this request; null when there is no more to say
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Problem(String type, String title, int status, @Nullable String detail) {

  /** The media type of this body. */
  public static final String MEDIA_TYPE = "application/problem+json";

  static Problem of(int status, String title, @Nullable String detail) {
    return new Problem("about:blank", title, status, detail);
  }
}
