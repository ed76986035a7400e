// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.gantry.model.GantryTrouble;
import foldwright.machine.file.NearestWord;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The root command: it only holds the others. */
@Command(
        name = "foldwright",
        description = "Motion simulator for small machines that fold flat.",
        synopsisSubcommandLabel = "COMMAND",
        mixinStandardHelpOptions = true,
        version = "foldwright 0.1.0",
        footer = {
            "",
            "Returns 0 when everything holds, 1 when something fails its verdict, 2 for input that"
                    + " cannot be used, 3 for a fault of the program.",
            "",
            "Example:",
            "  foldwright assess scenes/van-bench.json -o report"
        })
public final class Foldwright implements Runnable {
    private static final Map<String, Supplier<Callable<Integer>>> COMMANDS = new LinkedHashMap<>();

    static {
        COMMANDS.put("new", NewCommand::new);
        COMMANDS.put("assess", AssessCommand::new);
        COMMANDS.put("curve", CurveCommand::new);
        COMMANDS.put("fold", FoldCommand::new);
        COMMANDS.put("hold", HoldCommand::new);
        COMMANDS.put("replay", ReplayCommand::new);
        COMMANDS.put("limits", LimitsCommand::new);
        COMMANDS.put("proof", ProofCommand::new);
    }

    @Spec private CommandSpec spec;

    private Foldwright() {}

    /** Every command of this module; the viewer adds its own before it runs them. */
    public static CommandLine commandLine() {
        return commandLine(COMMANDS.keySet());
    }

    /** Names of the commands of this module. */
    public static Set<String> commands() {
        return Collections.unmodifiableSet(COMMANDS.keySet());
    }

    /**
     * Some of the commands: describing all of them to the parser takes longer than a curve.
     *
     * @param wanted names; others than those of commands are passed over
     */
    public static CommandLine commandLine(Set<String> wanted) {
        CommandLine line = new CommandLine(new Foldwright());
        COMMANDS.forEach(
                (name, command) -> {
                    if (wanted.contains(name)) {
                        line.addSubcommand(command.get());
                    }
                });
        StandardStream out = StandardStream.out();
        line.setOut(new PrintWriter(out, true));
        line.setErr(new PrintWriter(StandardStream.err(), true));
        line.setExecutionStrategy(parsed -> run(parsed, out));
        line.registerConverter(Path.class, Misuse::path);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(100);
        line.setParameterExceptionHandler(Foldwright::misused);
        line.setExecutionExceptionHandler(Foldwright::failed);
        line.getSubcommands().values().forEach(Foldwright::dress);
        return line;
    }

    /** Adds a command of another module, with all that the commands here share. */
    public static void add(CommandLine line, Object command) {
        line.addSubcommand(command);
        CommandSpec spec = line.getCommandSpec();
        CommandLine added =
                spec.subcommands().values().stream()
                        .filter(c -> c.getCommand() == command)
                        .findFirst()
                        .orElseThrow();
        added.setOut(line.getOut());
        added.setErr(line.getErr());
        added.registerConverter(Path.class, Misuse::path);
        added.setCaseInsensitiveEnumValuesAllowed(true);
        added.setUsageHelpWidth(line.getUsageHelpWidth());
    }

    /** Gives a command the help option and the width that all commands have. */
    private static void dress(CommandLine command) {
        command.getCommandSpec().mixinStandardHelpOptions(true);
    }

    /** Runs a command; a result that nobody could keep is no result. */
    private static int run(CommandLine.ParseResult parsed, StandardStream out) {
        int exit = new CommandLine.RunLast().execute(parsed);
        CommandLine line = parsed.commandSpec().commandLine();
        line.getOut().flush();
        if (out.trouble().isEmpty()) {
            return exit;
        }
        line.getErr().println("foldwright: standard output: " + out.trouble().get());
        return ExitCode.BAD_INPUT;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    private static int misused(ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        PrintWriter err = command.getErr();
        if (e instanceof UnmatchedArgumentException unmatched) {
            String word = unmatched.getUnmatched().get(0);
            err.println("foldwright: " + unknown(word, command.getCommandSpec()));
            nearest(word, command.getCommandSpec()).ifPresent(w -> err.println("nearest: " + w));
        } else {
            err.println("foldwright: " + Misuse.words(e));
        }
        err.println("help: " + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.BAD_INPUT;
    }

    private static String unknown(String word, CommandSpec spec) {
        if (word.startsWith("-")) {
            return "there is no option \"" + word + "\"";
        }
        if (!spec.subcommands().isEmpty()) {
            return "there is no command \""
                    + word
                    + "\"; allowed: "
                    + String.join(", ", spec.subcommands().keySet());
        }
        List<String> places =
                spec.positionalParameters().stream().map(p -> p.paramLabel()).toList();
        return "one word too many: \""
                + word
                + "\"; allowed: "
                + (places.isEmpty() ? "options only" : String.join(" ", places) + " and options");
    }

    private static Optional<String> nearest(String word, CommandSpec spec) {
        List<String> known = new ArrayList<>(spec.optionsMap().keySet());
        if (!word.startsWith("-")) {
            known = List.copyOf(spec.subcommands().keySet());
        }
        return NearestWord.of(word, known)
                .map(w -> w.startsWith("-") ? w : spec.qualifiedName() + " " + w);
    }

    private static int failed(Exception e, CommandLine command, CommandLine.ParseResult parsed) {
        PrintWriter err = command.getErr();
        if (e instanceof BadInput) {
            err.println("foldwright: " + e.getMessage());
            return ExitCode.BAD_INPUT;
        }
        if (e instanceof GantryTrouble) {
            err.println("foldwright: the gantry of this machine: " + e.getMessage());
            return ExitCode.BAD_INPUT;
        }
        err.println(
                "foldwright: stopped by a fault of its own ("
                        + e
                        + "). Please report it with the machine file.");
        if (System.getenv("FOLDWRIGHT_TRACE") != null) {
            e.printStackTrace(err);
        }
        return ExitCode.FAULT;
    }
}
