package rindward.hardware.mqtt;

import org.eclipse.paho.client.mqttv3.MqttException;

/** Says in one sentence why the broker could not be reached, and what may help. */
final class MqttTrouble {
  private MqttTrouble() {}

  static String sentence(BrokerSettings settings, MqttException e) {
    String broker = "The broker at " + settings.uri();
    return switch (e.getReasonCode()) {
      case MqttException.REASON_CODE_FAILED_AUTHENTICATION,
          MqttException.REASON_CODE_NOT_AUTHORIZED ->
          broker + " refuses user '" + settings.user() + "'; check user and password.";
      case MqttException.REASON_CODE_INVALID_CLIENT_ID ->
          broker + " refuses the client id '" + settings.clientId() + "'.";
      case MqttException.REASON_CODE_CLIENT_TIMEOUT -> broker + " does not answer.";
      case MqttException.REASON_CODE_SERVER_CONNECT_ERROR ->
          broker + " cannot be reached; check address, port and network.";
      default ->
          broker
              + " could not be used: "
              + (e.getCause() == null ? e.getMessage() : e.getCause().getMessage())
              + ".";
    };
  }
}
