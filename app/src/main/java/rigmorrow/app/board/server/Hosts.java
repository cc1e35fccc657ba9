package rigmorrow.app.board.server;

import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.Collections;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The names and addresses under which the board may be asked. A page of another site can have its
 * own name lead to this machine (DNS rebinding); a request that calls us by a foreign name is such.
 */
final class Hosts {
  /** What a browser leaves out of an address, and of the header. */
  private static final int USUAL_HTTP_PORT = 80;

  private static final Pattern HEADER =
      Pattern.compile("(\\[[0-9a-f:.]+]|[^\\[\\]:]+)(?::([0-9]{1,5}))?");

  private final Set<String> names;

  private Hosts(Set<String> names) {
    this.names = names.stream().map(Hosts::canonical).collect(Collectors.toUnmodifiableSet());
  }

  /** The names for a host that we listen on. */
  static Hosts of(String host) {
    Set<String> names = new HashSet<>();
    names.add(written(host));
    names.add("localhost");
    names.add("127.0.0.1");
    names.add("[::1]");
    if (!ServerSettings.loopback(host)) {
      addOwn(names);
    }
    return new Hosts(names);
  }

  /** True when the value of a Host header is one of our names with that port. */
  boolean ours(String header, int port) {
    Matcher parts = HEADER.matcher(header.toLowerCase(Locale.ROOT));
    if (!parts.matches()) {
      return false;
    }
    String named = parts.group(2);
    int asked = named == null ? USUAL_HTTP_PORT : Integer.parseInt(named);
    return asked == port && names.contains(canonical(parts.group(1)));
  }

  /** An address of IPv6 can be written in many ways. Nothing is looked up: it is no name. */
  private static String canonical(String name) {
    if (!name.startsWith("[")) {
      return name;
    }
    try {
      String address = name.substring(1, name.length() - 1);
      return address.contains(":")
          ? written(InetAddress.getByName(address).getHostAddress())
          : name;
    } catch (UnknownHostException e) {
      return name;
    }
  }

  /** A name under which others reach what listens on a host: every address is none to open. */
  static String reachable(String host) {
    if (!host.equals("0.0.0.0") && !host.equals("::")) {
      return written(host);
    }
    Set<String> own = new TreeSet<>();
    addAddresses(own);
    return own.stream()
        .filter(name -> name.matches("[0-9.]+") && !ServerSettings.loopback(name))
        .findFirst()
        .orElse("127.0.0.1");
  }

  /** As it stands in an address. */
  static String written(String host) {
    String lower = host.toLowerCase(Locale.ROOT);
    return lower.contains(":") ? "[" + lower + "]" : lower;
  }

  /** Whoever listens for others is called by any of the machine's names and addresses. */
  private static void addOwn(Set<String> names) {
    addAddresses(names);
    try {
      String name = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
      names.add(name);
      names.add(name + ".local");
    } catch (IOException e) {
      // The machine has no name.
    }
  }

  private static void addAddresses(Set<String> names) {
    try {
      for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
        for (InetAddress address : Collections.list(card.getInetAddresses())) {
          String text = address.getHostAddress();
          int scope = text.indexOf('%');
          names.add(written(scope < 0 ? text : text.substring(0, scope)));
        }
      }
    } catch (SocketException e) {
      // Then the given name and the machine's own have to do.
    }
  }
}
