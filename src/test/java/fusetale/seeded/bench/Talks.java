package fusetale.seeded.bench;

/** Breaks: standard streams and exit codes belong to the commands. */
final class Talks {
    void say() {
        System.out.println("12.34 V");
        System.exit(1);
    }
}
