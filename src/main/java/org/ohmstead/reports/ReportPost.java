package org.ohmstead.reports;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayOutputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.ohmstead.access.Access;
import org.ohmstead.access.People;
import org.ohmstead.access.Person;
import org.ohmstead.kernel.NotFound;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.mail.MailException;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.mail.javamail.MimeMessageHelper;
import org.springframework.stereotype.Component;

/**
 * Sends subscribed reports, each made as the person who gets it: with that person's reach on the day. Each at most once in
 * its period; what could not be sent is tried again the next day. Without a mail server it does nothing.
 */
@Component
class ReportPost {

    private static final Logger LOG = LoggerFactory.getLogger(ReportPost.class);

    private final ObjectProvider<JavaMailSender> mail;
    private final ReportSubscriptions subscriptions;
    private final ReportDesk desk;
    private final People people;
    private final Access access;
    private final ReportSettings settings;
    private final Clock clock;

    ReportPost(
            ObjectProvider<JavaMailSender> mail,
            ReportSubscriptions subscriptions,
            ReportDesk desk,
            People people,
            Access access,
            ReportSettings settings,
            Clock clock) {
        this.mail = mail;
        this.subscriptions = subscriptions;
        this.desk = desk;
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
        for (Subscription subscription : subscriptions.open(today)) {
            try {
                send(sender, subscription);
                subscriptions.sent(subscription, today);
                sent++;
            } catch (MailException | MessagingException | NotFound e) {
                LOG.warn("Report {} of {} was not sent", subscription.kind(), subscription.username(), e);
                failed.add(subscription.username() + ": " + subscription.kind().code());
            }
        }
        if (!failed.isEmpty()) {
            throw new IllegalStateException("Reports not sent: " + failed);
        }
        return sent;
    }

    private void send(JavaMailSender sender, Subscription subscription) throws MessagingException {
        Person person = people.findEnabled(subscription.username())
                .orElseThrow(() -> NotFound.of("account", subscription.username()));
        MadeReport made = access.as(person, () -> desk.make(subscription.wish()));
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        made.write(subscription.form(), file);
        MimeMessage message = sender.createMimeMessage();
        MimeMessageHelper helper = new MimeMessageHelper(message, true, "UTF-8");
        helper.setFrom(settings.from());
        helper.setTo(subscription.email());
        helper.setSubject(
                "Batteries: " + made.full().title() + ", " + made.full().asOf());
        helper.setText(text(subscription, made));
        helper.addAttachment(
                made.fileName(subscription.form()),
                new ByteArrayResource(file.toByteArray()),
                subscription.form().mediaType().replaceFirst(";.*", ""));
        sender.send(message);
    }

    private static String text(Subscription subscription, MadeReport made) {
        StringBuilder text = new StringBuilder(made.full().title()).append("\n\n");
        made.full()
                .facts()
                .forEach(fact -> text.append(fact.name())
                        .append(": ")
                        .append(fact.words())
                        .append('\n'));
        return text.append("\nThe report is attached. ")
                .append(made.full().note())
                .append("\nYou asked for it ")
                .append(subscription.rhythm().words())
                .append(" on the page Reports; stop it there.\n")
                .toString();
    }
}
