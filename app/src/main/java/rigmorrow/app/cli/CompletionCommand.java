package rigmorrow.app.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigmorrow.app.report.Json;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;

/** Prints what a shell needs to complete our commands. */
@Command(
    name = "completion",
    description = "Print a completion script for your shell.",
    footer = {
      "Examples:",
      "  rigmorrow completion bash > ~/.local/share/bash-completion/completions/rigmorrow",
      "  source <(rigmorrow completion zsh)        # in ~/.zshrc, after compinit"
    })
final class CompletionCommand implements Callable<Integer> {
  /** Shells there is a script for. */
  enum Shell {
    bash,
    zsh
  }

  @Mixin CommonOptions common;

  @Parameters(paramLabel = "SHELL", description = "One of: ${COMPLETION-CANDIDATES}.")
  private Shell shell;

  @Spec private CommandLine.Model.CommandSpec spec;

  private final Session session;

  CompletionCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    String script = script(spec.root().commandLine());
    if (common.json) {
      session.print(List.of(Json.text(Json.document().put("script", script))));
    } else {
      session.print(script.lines().toList());
    }
    return ExitCodes.DONE;
  }

  private String script(CommandLine root) {
    String bash = AutoComplete.bash(root.getCommandName(), root);
    return shell == Shell.zsh ? "autoload -U +X bashcompinit && bashcompinit\n" + bash : bash;
  }
}
