package rigmorrow.benchmarks.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Microbenchmarks: hands everything to JMH. */
@Command(
    name = "micro",
    description = "Measures decodes a second with JMH; -h lists JMH's own options.")
final class MicroCommand implements Callable<Integer> {
  @Parameters(paramLabel = "JMH", arity = "0..*", description = "Arguments of JMH.")
  private List<String> arguments = List.of();

  @Override
  public Integer call() throws Exception {
    org.openjdk.jmh.Main.main(arguments.toArray(String[]::new));
    return ExitCodes.DONE;
  }
}
