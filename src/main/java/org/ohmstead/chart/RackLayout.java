package org.ohmstead.chart;

import java.util.ArrayList;
import java.util.List;

/** Where each jar of a rack is drawn: rows walked to and fro, each starting where the one above ended. */
final class RackLayout {

    static final double JAR_HEIGHT = 60;
    static final double ABOVE_ROW = 46;
    static final double ROW_PITCH = JAR_HEIGHT + ABOVE_ROW + 8;
    private static final double WIDEST_PITCH = 46;

    /**
     * @param rightward whether the row is walked from left to right
     */
    record Seat(double x, double y, double width, int row, boolean rightward) {

        double plusPost() {
            return x + width * (rightward ? 0.26 : 0.74);
        }

        double minusPost() {
            return x + width * (rightward ? 0.74 : 0.26);
        }
    }

    private record Slot(int column, int row, boolean rightward) {}

    private final List<Seat> seats;
    private final double left;
    private final double right;
    private final double margin;

    private RackLayout(List<Slot> slots, double width, double margin) {
        this.margin = margin;
        int first = slots.stream().mapToInt(Slot::column).min().orElseThrow();
        int columns = slots.stream().mapToInt(Slot::column).max().orElseThrow() - first + 1;
        double pitch = Math.min(WIDEST_PITCH, (width - 2 * margin) / columns);
        seats = slots.stream().map(slot -> seat(slot, first, pitch)).toList();
        left = margin;
        right = margin + columns * pitch;
    }

    /**
     * @param longestRow a tier of more jars is broken into several rows, each starting at the rack's side; without a
     *     limit a tier is one row that starts where the one above ended
     */
    static RackLayout of(List<Integer> tiers, int longestRow, double width, double margin) {
        List<Slot> slots = new ArrayList<>();
        int row = 0;
        int column = 0;
        for (int jars : tiers) {
            for (int rest = jars; rest > 0; rest -= longestRow, row++) {
                int from = longestRow == Integer.MAX_VALUE ? column : row % 2 == 0 ? 0 : longestRow - 1;
                column = walk(slots, from, row, Math.min(rest, longestRow));
            }
        }
        return new RackLayout(slots, width, margin);
    }

    private static int walk(List<Slot> slots, int from, int row, int jars) {
        boolean rightward = row % 2 == 0;
        int step = rightward ? 1 : -1;
        for (int i = 0; i < jars; i++) {
            slots.add(new Slot(from + i * step, row, rightward));
        }
        return from + (jars - 1) * step;
    }

    private Seat seat(Slot slot, int firstColumn, double pitch) {
        double gap = Math.min(4, pitch * 0.12);
        double x = margin + (slot.column - firstColumn) * pitch + gap / 2;
        return new Seat(x, ABOVE_ROW + slot.row * ROW_PITCH, pitch - gap, slot.row, slot.rightward);
    }

    Seat seat(int position) {
        return seats.get(position - 1);
    }

    List<Seat> seats() {
        return seats;
    }

    int jars() {
        return seats.size();
    }

    double left() {
        return left;
    }

    double right() {
        return right;
    }

    double width() {
        return right + margin;
    }

    double height() {
        return seats.get(seats.size() - 1).y() + JAR_HEIGHT + 14;
    }
}
