package org.ohmstead.programme.web;

import java.nio.charset.StandardCharsets;
import org.ohmstead.access.Access;
import org.ohmstead.access.CalendarKeys;
import org.ohmstead.access.Person;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.programme.CalendarFeed;
import org.ohmstead.programme.DigestWishes;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** A person's reminders: the calendar with its secret address, made and revoked by its owner, and the digest by e-mail. */
@Controller
class CalendarPages {

    private final CalendarKeys keys;
    private final CalendarFeed feed;
    private final DigestWishes digests;
    private final Access access;

    CalendarPages(CalendarKeys keys, CalendarFeed feed, DigestWishes digests, Access access) {
        this.keys = keys;
        this.feed = feed;
        this.digests = digests;
        this.access = access;
    }

    @GetMapping("/account/calendar")
    String page(Model model) {
        model.addAttribute("madeAt", keys.madeAt(access.current()).orElse(null));
        model.addAttribute("email", digests.own().orElse(null));
        return "programme/calendar";
    }

    @PostMapping("/account/digest")
    String digest(@RequestParam String email, RedirectAttributes redirect) {
        try {
            digests.wish(email);
            redirect.addFlashAttribute("notice", "The digest will come to " + email.strip() + ".");
        } catch (Refused e) {
            redirect.addFlashAttribute("problem", e.getMessage());
        }
        return "redirect:/account/calendar";
    }

    @PostMapping("/account/digest/stop")
    String stopDigest(RedirectAttributes redirect) {
        digests.stop();
        redirect.addFlashAttribute("notice", "No more digests will come.");
        return "redirect:/account/calendar";
    }

    @PostMapping("/account/calendar")
    String create(RedirectAttributes redirect) {
        String secret = keys.create(access.current());
        String address = ServletUriComponentsBuilder.fromCurrentContextPath()
                .path("/calendar/" + secret + ".ics")
                .toUriString();
        redirect.addFlashAttribute("address", address);
        return "redirect:/account/calendar";
    }

    @PostMapping("/account/calendar/revoke")
    String revoke(RedirectAttributes redirect) {
        keys.revoke(access.current());
        redirect.addFlashAttribute("notice", "The address opens nothing any more.");
        return "redirect:/account/calendar";
    }

    /** Asked by calendar programs, which sign in nowhere: whoever knows the address sees what its owner may see. */
    @GetMapping("/calendar/{secret}.ics")
    ResponseEntity<byte[]> calendar(@PathVariable String secret) {
        Person owner = keys.owner(secret).orElseThrow(() -> new NotFound("There is no such calendar."));
        byte[] text = access.as(owner, feed::text).getBytes(StandardCharsets.UTF_8);
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "calendar", StandardCharsets.UTF_8))
                .cacheControl(CacheControl.noStore())
                .body(text);
    }
}
