package rindward.controller.journal;

/** What must be shown to protect a heated room before it is heated, and again each year. */
public enum Proof {
  HIGH_LIMIT("the high limit opens and stays open until its button is pressed"),
  FROST_THERMOSTAT("the frost thermostat brings heat without this board"),
  FAN_UNPLUGGED("the heater stays off while its fan is off"),
  CONTACTOR_BRIDGED("heartbeat and limit end the heat with the heater's contactor bridged"),
  RCD_INSTRUMENT("the residual-current devices trip by an instrument"),
  RCD_BUTTON("the residual-current devices trip by their button"),
  /** Of a network relay: the seconds until it was off by itself. */
  AUTO_OFF("the network relay switches itself off when commands stop"),
  /** Of the whole shed: the seconds until everything heavy was open. */
  HEARTBEAT_STOPPED("everything heavy opens when the heart stops"),
  /** The owner's word for heat in a room whose high limit was not shown to open. */
  HEAT_WITHOUT_LIMIT("the owner heats without a proven high limit");

  private final String sentence;

  Proof(String sentence) {
    this.sentence = sentence;
  }

  /** Returns what it shows, as the rest of a sentence. */
  public String sentence() {
    return sentence;
  }
}
