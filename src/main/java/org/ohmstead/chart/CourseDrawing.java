package org.ohmstead.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/** Draws a {@link Course}; each line bears its name at its end. */
public final class CourseDrawing {

    private static final double WIDTH = 440;
    private static final double HEIGHT = 260;
    private static final double LEFT = 48;
    private static final double RIGHT = WIDTH - 82;
    private static final double TOP = 22;
    private static final double BOTTOM = HEIGHT - 38;
    private static final double WORDS_APART = 13;

    private final Course course;
    private final Axis up;
    private final Axis along;
    /** The drawing ends where the lines do, not at a round number. */
    private final double end;

    private final Svg svg;

    private CourseDrawing(String id, Course course) {
        this.course = course;
        up = Axis.covering(
                DoubleStream.concat(
                                course.lines().stream().flatMapToDouble(line -> DoubleStream.of(line.values())),
                                course.levels().stream().mapToDouble(Trend.Level::value))
                        .toArray(),
                5);
        along = Axis.covering(course.at(), 5);
        end = course.at().length < 2 ? along.high() : course.at()[course.at().length - 1];
        svg = Svg.drawing(
                "img",
                id,
                "course",
                WIDTH,
                HEIGHT,
                course.title(),
                course.lines().size() + " lines in " + course.unit() + "; the table beside it holds the values.");
    }

    public static String of(String id, Course course) {
        return new CourseDrawing(id, course).draw();
    }

    private String draw() {
        svg.label("unit", 4, 13, course.unit());
        up.ticks().forEach(this::tickUp);
        along.ticks().stream().filter(place -> place <= end).forEach(this::tickAlong);
        svg.label("tick middle", (LEFT + RIGHT) / 2, HEIGHT - 4, course.along());
        for (Trend.Level level : course.levels()) {
            svg.line(level.limit() ? "level limit" : "level", LEFT, y(level.value()), RIGHT, y(level.value()));
        }
        course.lines().forEach(line -> svg.path("curve" + look(line), path(line)));
        for (Trend.Level level : course.levels()) {
            svg.label(
                    level.limit() ? "level-words limit" : "level-words", LEFT + 6, y(level.value()) - 5, level.words());
        }
        names();
        return svg.done();
    }

    private void tickUp(double value) {
        svg.line("grid", LEFT, y(value), RIGHT, y(value));
        svg.label("tick end", LEFT - 7, y(value) + 4, up.label(value));
    }

    private void tickAlong(double place) {
        svg.line("grid", x(place), BOTTOM, x(place), BOTTOM + 4);
        svg.label("tick middle", x(place), BOTTOM + 18, along.label(place));
    }

    private static String look(Course.Line line) {
        return line.asks() ? " asks" : line.main() ? " main" : "";
    }

    private String path(Course.Line line) {
        StringBuilder path = new StringBuilder();
        boolean pen = false;
        for (int i = 0; i < course.at().length; i++) {
            double value = line.values()[i];
            if (Double.isFinite(value)) {
                path.append(pen ? 'L' : 'M')
                        .append(Svg.number(x(course.at()[i])))
                        .append(' ')
                        .append(Svg.number(y(value)));
            }
            pen = Double.isFinite(value);
        }
        return path.toString();
    }

    private record Name(Course.Line line, double y) {}

    /** At the height of each line's end, moved down as far as the one above needs. */
    private void names() {
        List<Name> names = new ArrayList<>();
        for (Course.Line line : course.lines()) {
            DoubleStream.of(line.values())
                    .filter(Double::isFinite)
                    .reduce((first, second) -> second)
                    .ifPresent(last -> names.add(new Name(line, y(last))));
        }
        names.sort(Comparator.comparingDouble(Name::y));
        double free = TOP;
        for (Name name : names) {
            double y = Math.max(name.y(), free);
            svg.label(
                    "end-words" + look(name.line()),
                    RIGHT + 6,
                    y + 4,
                    name.line().words());
            free = y + WORDS_APART;
        }
    }

    private double x(double place) {
        return LEFT + (RIGHT - LEFT) * (place - along.low()) / (end - along.low());
    }

    private double y(double value) {
        return BOTTOM - (BOTTOM - TOP) * up.share(value);
    }
}
