package fusetale.cli;

import fusetale.circuit.Circuit;
import fusetale.explore.Words;
import fusetale.report.Emphasis;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Where the program starts. */
@Command(name = "fusetale", mixinStandardHelpOptions = true, versionProvider = Version.class)
public final class Main implements Runnable {
    private static final Words WORDS = Words.of(Main.class);

    private final Console console;

    private Main(Console console) {
        this.console = console;
    }

    /** Runs a command and ends the program with its exit code: 0 done, 1 no, 2 unusable input, 3 no answer found. */
    public static void main(String[] arguments) {
        // The library looks whether a terminal is at the other end, and honours NO_COLOR (https://no-color.org).
        boolean terminal = Ansi.AUTO.enabled();
        Charset charset = charset(terminal);
        Outlet outlet = new Outlet(new FileOutputStream(FileDescriptor.out));
        PrintWriter out = new PrintWriter(outlet, false, charset);
        PrintWriter err = new PrintWriter(new PrintStream(System.err, false, charset), false, charset);
        int code;
        try {
            code = run(out, err, terminal ? Emphasis.TERMINAL : Emphasis.NONE, arguments);
        } catch (OutOfMemoryError e) {
            err.print(WORDS.say("memory") + "\n");
            err.flush();
            code = ExitCodes.NO_ANSWER;
        }
        System.exit(code == ExitCodes.DONE ? delivered(outlet, err) : code);
    }

    /**
     * Gives in the terminal what the window would have shown, where there is no display to open one on.
     *
     * @param file the circuit file; empty where none was named
     * @param sentence what is supposed, in pieces; may be empty
     */
    public static void withoutDisplay(Optional<String> file, List<String> sentence) {
        System.err.println(WORDS.say("no-display"));
        main(instead(file, sentence).toArray(new String[0]));
    }

    /** The command that answers what a window would have shown. */
    static List<String> instead(Optional<String> file, List<String> sentence) {
        if (file.isEmpty()) {
            return List.of("--help");
        }
        List<String> arguments = new ArrayList<>();
        arguments.add(sentence.isEmpty() || ofTheBenchAlone(file.get(), sentence) ? "readings" : "suppose");
        arguments.add(file.get());
        arguments.addAll(sentence);
        return arguments;
    }

    /** Whether a sentence supposes nothing; what is wrong with one that cannot be read, the command itself will tell. */
    private static boolean ofTheBenchAlone(String file, List<String> sentence) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        try {
            Circuit circuit = CircuitFiles.read(file, new Console(nowhere, nowhere, Emphasis.NONE));
            return Asked.arranging(circuit, sentence)
                    .told()
                    .sentence()
                    .supposition()
                    .isNothing();
        } catch (Refused unusable) {
            return false;
        }
    }

    /** An answer that was worked out but could not be written, as on a full disk, is none. */
    private static int delivered(Outlet outlet, PrintWriter err) {
        outlet.loss().ifPresent(why -> err.print(WORDS.say("lost", why) + "\n"));
        err.flush();
        return outlet.loss().isPresent() ? ExitCodes.UNUSABLE : ExitCodes.DONE;
    }

    /** UTF-8, but on a terminal what that understands; one that claims ASCII only is one whose locale was never set. */
    private static Charset charset(boolean terminal) {
        String name = System.getProperty("stdout.encoding", System.getProperty("sun.stdout.encoding", "UTF-8"));
        if (!terminal || !Charset.isSupported(name)) {
            return StandardCharsets.UTF_8;
        }
        Charset charset = Charset.forName(name);
        return charset.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : charset;
    }

    /**
     * Runs a command.
     *
     * @param out where answers go; a reader that has gone away is no error
     * @param err where messages go
     * @param emphasis how text may stand out
     * @return the exit code
     */
    public static int run(PrintWriter out, PrintWriter err, Emphasis emphasis, String... arguments) {
        Console console = new Console(out, err, emphasis);
        CommandLine line = new CommandLine(new Main(console));
        line.addSubcommand("inspect", new Inspect(console));
        line.addSubcommand("readings", new Readings(console));
        line.addSubcommand("suppose", new Suppose(console));
        line.addSubcommand("match", new Match(console, Match.Matching.WORKED_OUT));
        line.addSubcommand("modes", new Modes(console));
        CommandLine sheet = new CommandLine(new Sheet(console));
        BenchOptions.hideWhatSheetsRefuse(sheet.getCommandSpec());
        line.addSubcommand("sheet", sheet);
        line.setResourceBundle(WORDS.bundle());
        line.setUsageHelpWidth(100);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(emphasis == Emphasis.TERMINAL ? Ansi.ON : Ansi.OFF));
        line.setOut(out);
        line.setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        // an argument is what it says; the library would take '@name' for a file of arguments
        line.setExpandAtFiles(false);
        line.registerConverter(int.class, text -> whole(text, Integer::valueOf));
        line.registerConverter(long.class, text -> whole(text, Long::valueOf));
        line.setParameterExceptionHandler(Main::notUnderstood);
        line.setExecutionExceptionHandler((problem, command, parsed) -> failed(problem, console));
        int code = line.execute(arguments);
        out.flush();
        err.flush();
        return code;
    }

    @Override
    public void run() {
        console.out().print(WORDS.say("first") + "\n");
    }

    private static <N> N whole(String text, Function<String, N> parsed) {
        try {
            return parsed.apply(text);
        } catch (NumberFormatException e) {
            throw new TypeConversionException(WORDS.say("whole", text));
        }
    }

    private static int notUnderstood(ParameterException problem, String[] arguments) {
        PrintWriter err = problem.getCommandLine().getErr();
        err.print(problem.getMessage() + "\n");
        UnmatchedArgumentException.printSuggestions(problem, err);
        err.print(
                WORDS.say("see-help", problem.getCommandLine().getCommandSpec().qualifiedName()) + "\n");
        return ExitCodes.UNUSABLE;
    }

    /** The one place where failures become exit codes. No stack trace unless asked for by {@code -Dfusetale.trace=true}. */
    private static int failed(Exception problem, Console console) {
        if (problem instanceof Refused refused) {
            console.err().print(refused.getMessage() + "\n");
            return refused.exitCode();
        }
        console.err().print(WORDS.say("unexpected", problem) + "\n");
        if (Boolean.getBoolean("fusetale.trace")) {
            problem.printStackTrace(console.err());
        }
        return ExitCodes.NO_ANSWER;
    }
}
