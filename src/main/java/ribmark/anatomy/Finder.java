package ribmark.anatomy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import ribmark.basics.Refused;
import ribmark.basics.Side;
import ribmark.basics.Suggest;

/** Finds what an operation names, or says in one sentence why it is not there and what to do. */
record Finder(Skeleton skeleton, Map<String, Part> parts, List<Contact> contacts, List<Contact> gone) {

    /** The part of this name, as it is now. */
    Part part(String written) {
        Part part = parts.get(written);
        if (part != null) {
            return part;
        }
        Ident ident = Ident.read(written);
        throw skeleton.bone(ident.id()).isEmpty() ? noSuchBone(ident) : notThereNow(ident);
    }

    Part partToSaw(String written, Plane plane) {
        Part part = part(written);
        if (plane == Plane.MIDLINE && !part.bone().isMidline()) {
            throw new Refused(
                    "“" + written + "” lies on the " + side(part) + " and not on the midline: saw it across.");
        }
        if (plane == Plane.MIDLINE && part.halves().isSided()) {
            throw new Refused("“" + written + "” is the " + side(part)
                    + " half already and has no midline left to saw: saw it across.");
        }
        return part;
    }

    private static String side(Part part) {
        return part.side() == Side.LEFT ? "left" : "right";
    }

    /** Every contact of this name that still holds, shares cut from it included. */
    List<Contact> contactsToSever(String written) {
        Ident ident = Ident.read(written);
        if (skeleton.joint(ident.id()).isEmpty()) {
            throw noSuchJoint(ident);
        }
        List<Contact> found = sharesOf(contacts, ident).stream()
                .filter(contact -> ident.halves().holds(contact.share()))
                .toList();
        if (found.isEmpty()) {
            throw noneHolds(ident);
        }
        return found;
    }

    private static List<Contact> sharesOf(List<Contact> among, Ident ident) {
        return among.stream()
                .filter(contact -> contact.joint().id().equals(ident.id()))
                .toList();
    }

    private Refused noneHolds(Ident ident) {
        boolean wasCut = sharesOf(gone, ident).stream()
                .map(Contact::share)
                .anyMatch(share -> ident.halves().holds(share) || share.holds(ident.halves()));
        List<Contact> left = sharesOf(contacts, ident);
        if (wasCut || left.isEmpty()) {
            return new Refused("“" + ident + "” is severed already: take it out of this operation.");
        }
        return new Refused("“" + ident + "” is not there, because that contact was never so divided: sever "
                + left.stream().map(Contact::name).collect(Collectors.joining(" or ")) + ".");
    }

    private Refused noSuchBone(Ident ident) {
        if (skeleton.joint(ident.id()).isPresent()) {
            return new Refused(
                    "“" + ident + "” is a joint or soft edge, which is neither sawn nor lifted: sever it instead.");
        }
        return beyondItsRow(ident.id())
                .orElseGet(() -> new Refused("No bone of this animal is called “" + ident.id() + "”"
                        + Suggest.orNothing(ident.id(), skeleton.boneIds()) + ": take an id from the list of bones."));
    }

    /** A number beyond the last of its row is no slip of the pen but another animal. */
    private Optional<Refused> beyondItsRow(String id) {
        return Ident.numbered(id)
                .filter(row -> row.number() > skeleton.last(row.letters()).orElse(Integer.MAX_VALUE))
                .map(row -> row.letters())
                .map(letters -> new Refused("“" + id + "” is not in this animal, "
                        + ending(letters, skeleton.last(letters).orElseThrow())
                        + ": name one that is there, or give another vertebral formula."));
    }

    private static String ending(String letters, int last) {
        return last == 0 ? "which has no " + letters : "whose " + letters + " end at " + last;
    }

    private Refused noSuchJoint(Ident ident) {
        if (skeleton.bone(ident.id()).isPresent()) {
            return new Refused("“" + ident + "” is a bone, which is not severed: saw it or lift it instead.");
        }
        return new Refused("No joint or soft edge of this animal is called “" + ident.id() + "”"
                + Suggest.orNothing(ident.id(), skeleton.jointIds()) + ": take an id from the list of joints.");
    }

    private Refused notThereNow(Ident ident) {
        String now = parts.values().stream()
                .filter(part -> part.bone().id().equals(ident.id()))
                .sorted((one, other) -> one.halves().compareTo(other.halves()))
                .map(Part::name)
                .collect(Collectors.joining(" and "));
        boolean sawn = parts.values().stream()
                .filter(part -> part.bone().id().equals(ident.id()))
                .anyMatch(part -> ident.halves().holds(part.halves()));
        return new Refused(
                sawn
                        ? "“" + ident + "” is not there any more, because it was sawn: what there is now is " + now
                                + "."
                        : "“" + ident + "” is not there, because no saw has made it: what there is now is " + now
                                + ".");
    }
}
