package ribmark.scoring;

import java.util.EnumMap;
import java.util.Map;

/** How many vertebrae more, or with a minus fewer, an animal has than the usual one, in each region that differs. */
public record Vertebrae(Map<Region, Integer> more) {

    /** The usual animal, or one nobody has counted. */
    public static final Vertebrae USUAL = new Vertebrae(Map.of());

    /** Keeps its own copy, head first. */
    public Vertebrae {
        Map<Region, Integer> inOrder = new EnumMap<>(Region.class);
        inOrder.putAll(more);
        more = java.util.Collections.unmodifiableMap(inOrder);
    }

    /** What was counted against what is usual, both written from head to tail with commas; what cannot be compared is taken as usual. */
    public static Vertebrae compared(String counted, String usual) {
        String[] here = counted.split(",");
        String[] usually = usual.split(",");
        if (here.length != usually.length || here.length > Region.values().length) {
            return USUAL;
        }
        Map<Region, Integer> more = new EnumMap<>(Region.class);
        for (int i = 0; i < here.length; i++) {
            int difference = Integer.parseInt(here[i].strip()) - Integer.parseInt(usually[i].strip());
            if (difference != 0) {
                more.put(Region.values()[i], difference);
            }
        }
        return new Vertebrae(more);
    }

    /** How many more than usual in one region. */
    public int more(Region region) {
        return more.getOrDefault(region, 0);
    }

    /** Whether nothing differs. */
    public boolean areUsual() {
        return more.isEmpty();
    }
}
