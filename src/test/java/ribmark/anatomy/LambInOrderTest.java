package ribmark.anatomy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A whole lamb taken apart in the order worked. Where the lines run is taken from practice; what each frees is derived
 * by us, counted on the graph.
 */
class LambInOrderTest {

    private static final List<String[]> DEEDS = Stream.of(
                    "sever IS-6L IS-6R SC-7La SC-7Ra XS | 139",
                    "sever CH-7La CH-7Ra IV-T6-T7 ZY-T6-T7 | 74 65",
                    "saw across L(last) | 65 43 32",
                    "sever PS-P PS-I | 65 43 32",
                    "saw midline L(last).far S1..S(last) Cd1..Cd(last) | 65 43 20 20",
                    "lift L(last).(side).far S1..S(last).(side) Cd1..Cd(last).(side) | 65 43 12 12 8 8",
                    "lift ILI(s) ISC(s) PUB(s) | 65 43 9 9 8 8 3 3",
                    "sever IV-C4-C5 ZY-C4-C5 LN-C2 LN-C3 LN-C4 | 61 43 9 9 8 8 4 3 3",
                    "saw midline C5..C(last) T1..T6 ST1..ST6 | 43 38 38 9 9 8 8 4 3 3",
                    "sever SYN-SVT(s) SYN-SVC(s) SYN-RHT(s) SYN-PEC(s) | 43 27 27 11 11 9 9 8 8 4 3 3",
                    "saw across HUM(s) | 43 27 27 9 9 9 9 8 8 4 3 3 3 3",
                    "saw across R7(s)..R(last)(s) | 30 27 27 27 9 9 9 9 8 8 4 3 3 3 3",
                    "saw midline T7..T(last) L1..L(last-1) L(last).near | 30 27 27 20 20 9 9 9 9 8 8 4 3 3 3 3",
                    "lift ST7 XC | 27 27 20 20 14 14 9 9 9 9 8 8 4 3 3 3 3 2",
                    "sever IV-T(last)-L1.(side) ZY-T(last)-L1.(side) | 27 27 14 14 14 14 9 9 9 9 8 8 6 6 4 3 3 3 3 2")
            .map(line -> line.split(" \\| "))
            .toList();
    private static final String KNUCKLE = "saw across HUM(s)";

    @Test
    void each_deed_frees_what_we_counted() {
        Animal lamb = Ovine.usual();
        for (String[] deed : DEEDS) {
            lamb = Ovine.after(lamb, deed[0]);
            assertThat(Ovine.sizes(lamb))
                    .as(deed[0])
                    .isEqualTo(
                            Stream.of(deed[1].split(" ")).map(Integer::valueOf).toList());
        }
        assertThat(lamb.parts()).hasSize(192);
        assertThat(lamb.parts().stream().map(Part::bone).distinct()).hasSize(139);
    }

    @Test
    void without_the_knuckle_there_are_two_pieces_and_two_parts_fewer() {
        Animal lamb = Ovine.after(
                Ovine.usual(),
                DEEDS.stream()
                        .map(deed -> deed[0])
                        .filter(deed -> !deed.equals(KNUCKLE))
                        .toArray(String[]::new));

        assertThat(lamb.pieces()).hasSize(18);
        assertThat(lamb.parts()).hasSize(190);
        assertThat(Ovine.sizes(lamb)).filteredOn(size -> size == 11).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "7,13,7,4,3",
                "7,14,5,4,3",
                "7,14,6,4,3",
                "7,14,7,4,3",
                "7,12,6,4,3",
                "7,12,7,4,3",
                "7,13,5,4,3",
                "7,15,6,4,3",
                "6,13,6,4,3",
                "7,13,6,4,0",
                "7,13,6,5,6"
            })
    void another_animal_ends_in_the_same_twenty_pieces(String formula) {
        Animal whole = Animal.whole(Ovine.with(formula));

        Animal lamb = Ovine.after(whole, DEEDS.stream().map(deed -> deed[0]).toArray(String[]::new));

        assertThat(lamb.pieces()).hasSize(20);
        assertThat(lamb.parts().stream().map(Part::bone).distinct())
                .hasSize(whole.skeleton().bones().size());
    }
}
