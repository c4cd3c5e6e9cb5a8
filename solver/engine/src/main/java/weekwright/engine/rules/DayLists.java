package weekwright.engine.rules;

import weekwright.engine.problem.Stimulus;

/** What is placed, by day and one more key, such as the group or the facility; each list in order of start. */
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
        int at = count;
        while (at > 0 && Stimulus.inOrder(placed, list[at - 1]) < 0) {
            list[at] = list[at - 1];
            at--;
        }
        list[at] = placed;
    }

    void remove(int key, Stimulus placed) {
        Stimulus[] list = lists[key][placed.day];
        int last = --counts[key][placed.day];
        int at = last;
        while (list[at] != placed) {
            at--;
        }
        System.arraycopy(list, at + 1, list, at, last - at);
    }

    /** What is placed on some days, in order of start. */
    Stimulus[] from(int key, int first, int last) {
        int end = Math.min(last, counts[key].length - 1);
        int all = 0;
        for (int day = first; day <= end; day++) {
            all += counts[key][day];
        }
        Stimulus[] some = new Stimulus[all];
        int at = 0;
        for (int day = first; day <= end; day++) {
            System.arraycopy(lists[key][day], 0, some, at, counts[key][day]);
            at += counts[key][day];
        }
        return some;
    }

    int count(int key, int day) {
        return day < 0 || day >= counts[key].length ? 0 : counts[key][day];
    }

    Stimulus at(int key, int day, int i) {
        return lists[key][day][i];
    }
}
