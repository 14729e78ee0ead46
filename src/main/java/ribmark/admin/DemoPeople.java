package ribmark.admin;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import ribmark.basics.Refused;
import ribmark.web.Role;

/** The people of the demo as their file gives them: who they are, who belongs together, and what to try as each. */
record DemoPeople(
        String password,
        String since,
        List<Member> people,
        List<Together> groups,
        List<Left> left,
        List<Report> reports,
        List<Hint> hints) {

    /** Somebody with an account. */
    record Member(String name, String role) {

        Role as() {
            return Role.of(role).orElseThrow(() -> new Refused("“" + role + "” is no role."));
        }
    }

    /** A group with the tutors who look after it. */
    record Together(String name, List<String> tutors, List<String> apprentices) {}

    /** Somebody whose account was closed. */
    record Left(String name, String when, String by) {}

    /** A progress report of somebody, or of a group, that a tutor took away as a table. */
    record Report(String when, String by, String of) {}

    /** What to try as one of the people. */
    record Hint(String name, String about, List<String> things) {}

    static DemoPeople read() {
        return DemoFile.read("people.yaml", DemoPeople.class);
    }

    /** Those who can still sign in, in the order of the file. */
    List<Member> whoCanSignIn() {
        Set<String> gone = left.stream().map(Left::name).collect(Collectors.toSet());
        return people.stream().filter(member -> !gone.contains(member.name())).toList();
    }

    /** The apprentices, those who left too. */
    List<String> apprentices() {
        return people.stream()
                .filter(member -> member.as() == Role.APPRENTICE)
                .map(Member::name)
                .toList();
    }
}
