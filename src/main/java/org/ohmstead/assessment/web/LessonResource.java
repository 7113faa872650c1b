package org.ohmstead.assessment.web;

import java.util.List;
import org.ohmstead.assessment.JarTypeLessons;
import org.ohmstead.assessment.Lesson;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** What the estate teaches of jar types, for programs. */
@RestController
class LessonResource {

    private final JarTypeLessons lessons;

    LessonResource(JarTypeLessons lessons) {
        this.lessons = lessons;
    }

    /** @param key of the lesson that was read */
    record Wish(String key) {}

    @GetMapping("/api/lessons")
    List<Lesson> all() {
        return lessons.all();
    }

    @GetMapping("/api/lessons/{code}")
    Lesson of(@PathVariable String code) {
        return lessons.of(code);
    }

    @PostMapping("/api/lessons/{code}")
    Lesson apply(@PathVariable String code, @RequestBody Wish wish) {
        return lessons.apply(code, wish.key());
    }

    @DeleteMapping("/api/lessons/{code}")
    Lesson takeBack(@PathVariable String code) {
        return lessons.takeBack(code);
    }
}
