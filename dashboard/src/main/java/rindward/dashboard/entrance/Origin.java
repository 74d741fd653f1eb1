package rindward.dashboard.entrance;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Locale;

/**
 * Where somebody comes from, as far as it costs something to come from elsewhere: an address, or in
 * IPv6 the network of 64 bits that every machine has to itself.
 */
record Origin(String word) {
  private static final int NETWORK_BYTES = 8;

  static Origin of(SocketAddress remote) {
    return remote instanceof InetSocketAddress inet && inet.getAddress() != null
        ? of(inet.getAddress())
        : new Origin(String.valueOf(remote));
  }

  /** Reads a figure, as {@code 192.168.1.20}; never asks anybody for a name. */
  static Origin of(String figure) {
    try {
      return of(InetAddress.getByName(figure));
    } catch (UnknownHostException e) {
      return new Origin(figure);
    }
  }

  /** Returns one spelling of an address in figures; of what is none, itself in small letters. */
  static String figure(String address) {
    String bare = address.replaceFirst("%.*$", "");
    try {
      return bare.matches("[0-9A-Fa-f:.]+")
          ? InetAddress.getByName(bare).getHostAddress()
          : bare.toLowerCase(Locale.ROOT);
    } catch (UnknownHostException e) {
      return bare.toLowerCase(Locale.ROOT);
    }
  }

  private static Origin of(InetAddress address) {
    byte[] bytes = address.getAddress();
    return new Origin(
        address instanceof Inet6Address
            ? HexFormat.ofDelimiter(":").formatHex(Arrays.copyOf(bytes, NETWORK_BYTES)) + "/64"
            : address.getHostAddress());
  }
}
