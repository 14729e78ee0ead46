package ribmark.anatomy;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * One animal as it lies there now: its parts, and the contacts that still hold them together. It never changes; each
 * operation gives a new one, or is refused in one sentence.
 */
public final class Animal {

    private final Skeleton skeleton;
    private final Map<String, Part> parts;
    private final List<Contact> contacts;
    private final List<Contact> gone;

    /** Worked out when first asked for; always the same, so that it does not matter who asks first. */
    private List<Piece> pieces = List.of();

    private Animal(Skeleton skeleton, Map<String, Part> parts, List<Contact> contacts, List<Contact> gone) {
        this.skeleton = skeleton;
        this.parts = parts;
        this.contacts = contacts;
        this.gone = gone;
    }

    /** The animal before the first cut. */
    public static Animal whole(Skeleton skeleton) {
        Map<String, Part> parts = new LinkedHashMap<>();
        skeleton.bones().forEach(bone -> parts.put(bone.id(), new Part(bone, Halves.WHOLE)));
        List<Contact> contacts = skeleton.joints().stream()
                .map(joint -> Contact.whole(
                        joint,
                        parts.get(joint.boneA()).bone(),
                        parts.get(joint.boneB()).bone()))
                .toList();
        return new Animal(skeleton, parts, contacts, List.of());
    }

    /** What it is after one operation. */
    public Animal after(Operation operation) {
        return operation.doneTo(this);
    }

    /** What it is after all of these, in the order written. */
    public Animal after(List<Operation> operations) {
        Animal now = this;
        for (Operation operation : operations) {
            now = now.after(operation);
        }
        return now;
    }

    /** The bones it is made of. */
    public Skeleton skeleton() {
        return skeleton;
    }

    /** Its parts in the order of the skeleton, then left before right, then near before far. */
    public List<Part> parts() {
        return List.copyOf(parts.values());
    }

    /** What hangs together, the largest piece first, equals by their first part. */
    public List<Piece> pieces() {
        if (pieces.isEmpty()) {
            pieces = Hanging.together(parts(), contacts).stream()
                    .sorted(Comparator.comparing(Piece::size).reversed().thenComparing(Piece::first, order()))
                    .toList();
        }
        return pieces;
    }

    private Comparator<Part> order() {
        return Comparator.<Part>comparingInt(part -> skeleton.position(part.bone()))
                .thenComparing(Part::halves);
    }

    /** One bone after the other, each found among what the saws before it made; then what held them holds their halves. */
    Animal sawn(List<String> ids, Plane plane) {
        Map<String, Part> after = new LinkedHashMap<>(parts);
        Finder finder = new Finder(skeleton, after, contacts, gone);
        Set<Part> sawn = new HashSet<>();
        for (String id : ids) {
            Part part = finder.partToSaw(id, plane);
            after.remove(part.name());
            part.sawn(plane).forEach(half -> after.put(half.name(), half));
            sawn.add(part);
        }
        List<Contact> held = new ArrayList<>();
        contacts.forEach(contact -> whenSawn(contact, sawn, plane, held));
        return new Animal(skeleton, inOrder(after), held, gone);
    }

    /** Halves are put where they belong once, so that nobody has to sort them again. */
    private Map<String, Part> inOrder(Map<String, Part> mixed) {
        Map<String, Part> sorted = new LinkedHashMap<>();
        mixed.values().stream().sorted(order()).forEach(part -> sorted.put(part.name(), part));
        return sorted;
    }

    /** A contact between two sawn bones follows first the one, then the other. */
    private static void whenSawn(Contact contact, Set<Part> sawn, Plane plane, List<Contact> held) {
        Part part = sawn.contains(contact.a()) ? contact.a() : contact.b();
        if (sawn.contains(part)) {
            contact.whenSawn(part, plane).forEach(share -> whenSawn(share, sawn, plane, held));
        } else {
            held.add(contact);
        }
    }

    /** One joint after the other, each found among what the cuts before it left. */
    Animal severed(List<String> ids) {
        List<Contact> held = new ArrayList<>(contacts);
        List<Contact> cut = new ArrayList<>(gone);
        Finder finder = new Finder(skeleton, parts, held, cut);
        for (String id : ids) {
            Set<Contact> found = new HashSet<>(finder.contactsToSever(id));
            held.removeIf(found::contains);
            cut.addAll(found);
        }
        return new Animal(skeleton, parts, held, cut);
    }

    Animal lifted(List<String> ids) {
        Set<Part> out = ids.stream().map(finder()::part).collect(Collectors.toSet());
        return without(contacts.stream()
                .filter(contact -> out.contains(contact.a()) != out.contains(contact.b()))
                .collect(Collectors.toSet()));
    }

    private Animal without(Set<Contact> cut) {
        List<Contact> all = new ArrayList<>(gone);
        all.addAll(cut);
        List<Contact> held =
                contacts.stream().filter(Predicate.not(cut::contains)).toList();
        return new Animal(skeleton, parts, held, all);
    }

    private Finder finder() {
        return new Finder(skeleton, Collections.unmodifiableMap(parts), contacts, gone);
    }

    /** What still holds these parts to the rest: joints, or shares of joints, in the order of the file. */
    public List<String> heldBy(Collection<String> names) {
        return contacts.stream()
                .filter(contact -> names.contains(contact.a().name())
                        != names.contains(contact.b().name()))
                .map(Contact::name)
                .toList();
    }
}
