package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.Climb;
import dev.lapwing.alerts.domain.Rung;
import dev.lapwing.care.domain.TaskKind;
import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of mails. They stand in {@code messages/mail_en.properties} and its siblings for Spanish and French. */
@MessageBundle(value = "mail", locale = "en")
interface MailWords {
    @Message
    String greeting(String name);

    @Message
    String strikeSubject(String unit);

    @Message
    String strikeLead(String unit, String depot);

    @Message
    String heldSubject(String unit);

    @Message
    String heldLead(String unit, String depot, String tech);

    @Message
    String nobodySubject(String unit);

    @Message
    String nobodyLead(String unit, String depot);

    @Message
    String assignedSubject(String unit, String work, String until);

    @Message
    String assignedLead(String unit, String work, String by);

    @Message
    String handedOverSubject(String unit, String work, String tech);

    @Message
    String handedOverLead(String unit, String work, String tech, String by);

    @Message
    String calledOffSubject(String unit, String work);

    @Message
    String calledOffLead(String unit, String work, String by, String why);

    @Message
    String digestSubject(String depot, String date, int count);

    @Message
    String digestLead(String depot);

    @Message
    String digestLeadTech(String depot);

    @Message
    String weekSubject(String depot, String date, int count);

    @Message
    String weekLead(String depot);

    @Message
    String weekLeadTech(String depot);

    @Message
    String outageSubject(int count);

    @Message
    String outageLead();

    @Message
    String openMyWork();

    @Message
    String lateSince(String date);

    @Message
    String andMore(int count);

    @Message
    String openDueList();

    @Message
    String untilNow();

    @Message
    String untilDate(String date);

    @Message
    String factUnit();

    @Message
    String factDepot();

    @Message
    String factWork();

    @Message
    String factDue();

    @Message
    String factTech();

    @Message
    String factNobody();

    @Message
    String factRain();

    @Message
    String rainAt(String time);

    @Message
    String rainNone(String until);

    @Message
    String rainUnknown();

    @Message
    String quoteLabel();

    @Message
    String openTask();

    @Message
    String openSheet();

    @Message
    String cautionsTitle();

    @Message
    String footer();

    @Message
    String work(TaskKind kind);

    @Message
    String ladderSubject(String unit, String wanting, String waited);

    @Message
    String ladderLead(String unit, String depot, String wanting, String waited);

    @Message
    String ladderManySubject(int count);

    @Message
    String ladderManyLead();

    @Message
    String wanting(Climb.Reason reason);

    @Message
    String ladderAsk(Rung rung);
}
