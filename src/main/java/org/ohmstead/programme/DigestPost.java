package org.ohmstead.programme;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.ohmstead.access.Access;
import org.ohmstead.access.People;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.mail.MailException;
import org.springframework.mail.SimpleMailMessage;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.stereotype.Component;

/** Sends the digests, one to each person who asked, at most one a day. Without a mail server it does nothing. */
@Component
class DigestPost {

    private static final Logger LOG = LoggerFactory.getLogger(DigestPost.class);

    private final ObjectProvider<JavaMailSender> mail;
    private final DigestWishes wishes;
    private final Digest digest;
    private final People people;
    private final Access access;
    private final DigestSettings settings;
    private final Clock clock;

    DigestPost(
            ObjectProvider<JavaMailSender> mail,
            DigestWishes wishes,
            Digest digest,
            People people,
            Access access,
            DigestSettings settings,
            Clock clock) {
        this.mail = mail;
        this.wishes = wishes;
        this.digest = digest;
        this.people = people;
        this.access = access;
        this.settings = settings;
        this.clock = clock;
    }

    /**
     * @return how many went out
     * @throws IllegalStateException when some could not be sent; the others were
     */
    int sendAll() {
        JavaMailSender sender = mail.getIfAvailable();
        if (sender == null) {
            return 0;
        }
        LocalDate today = LocalDate.ofInstant(clock.instant(), settings.zone());
        List<String> failed = new ArrayList<>();
        int sent = 0;
        for (DigestWishes.Wish wish : wishes.open(today)) {
            try {
                sent += send(sender, wish, today) ? 1 : 0;
            } catch (MailException e) {
                LOG.warn("The digest of {} was not sent", wish.username(), e);
                failed.add(wish.username());
            }
        }
        if (!failed.isEmpty()) {
            throw new IllegalStateException("Digests not sent to " + failed);
        }
        return sent;
    }

    private boolean send(JavaMailSender sender, DigestWishes.Wish wish, LocalDate today) {
        String text = people.findEnabled(wish.username())
                .map(person -> access.as(person, () -> digest.text(today, settings.daysAhead())))
                .orElse("");
        if (text.isEmpty()) {
            return false;
        }
        SimpleMailMessage message = new SimpleMailMessage();
        message.setFrom(settings.from());
        message.setTo(wish.email());
        message.setSubject("Batteries: what is due, " + today);
        message.setText(text + "Ohmic values show change, not capacity; only a capacity test shows capacity.\n"
                + "You asked for this digest on your account page; stop it there.\n");
        sender.send(message);
        wishes.sent(wish, today);
        return true;
    }
}
