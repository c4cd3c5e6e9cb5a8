package weekwright.engine.rules;

import weekwright.engine.problem.Stimulus;

/** What is placed, by day and one more key: the group or the facility. */
final class DayLists {
    private final Stimulus[][][] lists;
    private final int[][] counts;

    DayLists(int keys, int days) {
        lists = new Stimulus[keys][days][4];
        counts = new int[keys][days];
    }

    void add(int key, Stimulus placed) {
        int count = counts[key][placed.day]++;
        Stimulus[] list = lists[key][placed.day];
        if (count == list.length) {
            list = java.util.Arrays.copyOf(list, 2 * count);
            lists[key][placed.day] = list;
        }
        list[count] = placed;
    }

    void remove(int key, Stimulus placed) {
        Stimulus[] list = lists[key][placed.day];
        int last = --counts[key][placed.day];
        int at = last;
        while (list[at] != placed) {
            at--;
        }
        list[at] = list[last];
    }

    int count(int key, int day) {
        return day < 0 || day >= counts[key].length ? 0 : counts[key][day];
    }

    Stimulus at(int key, int day, int i) {
        return lists[key][day][i];
    }
}
