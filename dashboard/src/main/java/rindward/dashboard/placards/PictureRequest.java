package rindward.dashboard.placards;

import java.util.Base64;
import rindward.dashboard.request.JsonBody;

/**
 * A picture off which squares are to be read.
 *
 * @param jpeg in base64
 */
record PictureRequest(String jpeg) {

  PictureRequest {
    JsonBody.needed(jpeg, "jpeg", JsonBody.MAX_BYTES);
  }

  /**
   * Returns its bytes.
   *
   * @throws IllegalArgumentException in a sentence, when they are not in base64
   */
  byte[] bytes() {
    try {
      return Base64.getDecoder().decode(jpeg);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("jpeg was not in base64 but it must be.", e);
    }
  }
}
