package rigmorrow.app.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
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
    CommandLine root = spec.root().commandLine();
    if (shell == Shell.zsh) {
      session.print(List.of("autoload -U +X bashcompinit && bashcompinit"));
    }
    session.print(AutoComplete.bash(root.getCommandName(), root).lines().toList());
    return ExitCodes.DONE;
  }
}
