package rindward.dashboard.shed;

/** Why a manual command is not carried out, in a sentence for the person who gave it. */
public final class SwitchingRefused extends Exception {
  private static final long serialVersionUID = 1;

  public SwitchingRefused(String sentence) {
    super(sentence);
  }
}
