package rindward.dashboard.entrance;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.eclipse.jetty.io.AbstractConnection;
import org.eclipse.jetty.io.ByteArrayEndPoint;
import org.eclipse.jetty.io.Connection;
import org.junit.jupiter.api.Test;

/** Who keeps a connection, and for how long, by a clock that is moved by hand. */
class ConnectionsTest {
  private final AtomicLong seconds = new AtomicLong();
  private final Connections connections = new Connections(() -> seconds.get() * 1_000_000_000L);

  @Test
  void oneStranger_getsSoManyAndNoMore() {
    List<Wire> wires = open("192.168.1.7", 20);

    assertThat(open(wires)).isEqualTo(Connections.MOST_OF_A_STRANGER);
    wires.forEach(wire -> connections.answerBegins(wire.remote()));
    assertThat(open("192.168.1.7", 1)).noneMatch(Wire::isOpen);
    connections.answerEnds(wires.stream().filter(Wire::isOpen).findFirst().orElseThrow().remote());
    assertThat(open("192.168.1.7", 1)).allMatch(Wire::isOpen);
    assertThat(open(wires)).isEqualTo(Connections.MOST_OF_A_STRANGER - 1);
  }

  @Test
  void oneNetworkOfSixtyFourBits_isOneOrigin() {
    List<Wire> wires = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      wires.addAll(open("2001:db8:1:2::" + i, 1));
    }

    assertThat(open(wires)).isEqualTo(Connections.MOST_OF_A_STRANGER);
  }

  @Test
  void whoHasSignedIn_findsAPlaceThatStrangersCannotTake() {
    connections.know("192.168.1.9");
    List<Wire> busy = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      busy.addAll(open("10.0.0." + i, 1));
      connections.answerBegins(busy.get(i).remote());
    }

    assertThat(open(busy)).isEqualTo(Connections.MOST_OF_STRANGERS);
    assertThat(open("192.168.1.9", 24)).allMatch(Wire::isOpen);
    assertThat(open("10.0.1.1", 1)).noneMatch(Wire::isOpen);
  }

  @Test
  void whoComesNew_takesThePlaceOfWhoHasWaitedLongestWithoutARequest() {
    List<Wire> waiting = new ArrayList<>();
    for (int i = 0; i < Connections.MOST_OF_STRANGERS; i++) {
      waiting.addAll(open("10.0.0." + i, 1));
      seconds.addAndGet(i < 2 ? 1 : 0);
    }
    connections.answerBegins(waiting.get(0).remote());

    assertThat(open("10.0.1.1", 1)).allMatch(Wire::isOpen);
    assertThat(waiting.get(0).isOpen()).isTrue();
    assertThat(waiting.get(1).isOpen()).isFalse();
  }

  @Test
  void head_hasTenSeconds_howeverItTrickles() {
    Wire wire = open("192.168.1.7", 1).get(0);
    for (int i = 0; i < 10; i++) {
      pass(1);
      wire.in++;
    }
    assertThat(wire.isOpen()).isTrue();
    pass(1);
    assertThat(wire.isOpen()).isFalse();
  }

  @Test
  void body_hasTenSeconds_andFiveHundredBytesASecond() {
    Wire slow = open("192.168.1.7", 1).get(0);
    Wire good = open("192.168.1.7", 1).get(0);
    connections.bodyBegins(slow.remote());
    connections.bodyBegins(good.remote());
    for (int i = 0; i < 5; i++) {
      slow.in += 499;
      good.in += 500;
      pass(1);
    }
    assertThat(slow.isOpen()).isFalse();
    assertThat(good.isOpen()).isTrue();
    good.in += 100_000;
    pass(6);
    assertThat(good.isOpen()).isFalse();
  }

  @Test
  void betweenTwoRequests_itMayRest_butTheNextMustArrive() {
    Wire wire = open("192.168.1.7", 1).get(0);
    connections.bodyBegins(wire.remote());
    connections.answerBegins(wire.remote());
    pass(300);
    connections.answerEnds(wire.remote());
    pass(300);
    assertThat(wire.isOpen()).isTrue();
    wire.in++;
    pass(1);
    pass(9);
    assertThat(wire.isOpen()).isTrue();
    pass(2);
    assertThat(wire.isOpen()).isFalse();
  }

  @Test
  void whatHasEnded_isForgotten() {
    List<Wire> wires = open("192.168.1.7", 5);
    wires.forEach(Wire::hangUp);

    assertThat(connections.size()).isZero();
  }

  private void pass(int howMany) {
    seconds.addAndGet(howMany);
    connections.look();
  }

  private static long open(List<Wire> wires) {
    return wires.stream().filter(Wire::isOpen).count();
  }

  private List<Wire> open(String from, int howMany) {
    return IntStream.range(0, howMany)
        .mapToObj(
            i -> {
              Wire wire = new Wire(from);
              connections.onOpened(wire);
              return wire;
            })
        .toList();
  }

  private static int nextPort = 1_024;

  /** A connection without a network. */
  private final class Wire extends AbstractConnection {
    private long in;

    Wire(String from) {
      this(new InetSocketAddress(from, nextPort++));
    }

    private Wire(InetSocketAddress remote) {
      super(
          new ByteArrayEndPoint() {
            @Override
            public SocketAddress getRemoteSocketAddress() {
              return remote;
            }
          },
          Runnable::run);
    }

    SocketAddress remote() {
      return getEndPoint().getRemoteSocketAddress();
    }

    boolean isOpen() {
      return getEndPoint().isOpen();
    }

    void hangUp() {
      Connection self = this;
      getEndPoint().close();
      connections.onClosed(self);
    }

    @Override
    public long getBytesIn() {
      return in;
    }

    @Override
    public void onFillable() {}
  }
}
