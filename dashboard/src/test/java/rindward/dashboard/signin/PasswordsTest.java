package rindward.dashboard.signin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A name that nobody has must cost what a wrong password costs. */
class PasswordsTest {
  private final Passwords passwords = new Passwords(4);

  @Test
  void standIn_isAHashAtTheSameCost_whichNoPasswordHas() {
    String hash = passwords.hash("a russet gourd");

    assertThat(passwords.standIn()).hasSameSizeAs(hash).startsWith(hash.substring(0, 7));
    assertThat(passwords.matches("a russet gourd", passwords.standIn())).isFalse();
    assertThat(passwords.matches("a russet gourd", hash)).isTrue();
  }
}
