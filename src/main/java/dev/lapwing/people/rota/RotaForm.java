package dev.lapwing.people.rota;

import dev.lapwing.web.Typed;
import org.jboss.resteasy.reactive.RestForm;

/** What one of the forms of the rota page sent; kept as sent, so that a refused form shows it again. */
public class RotaForm {
    /** Which form it was: turn, absence or swap; null when none was sent. */
    String which;

    @RestForm
    String weekday;

    @RestForm
    String starts;

    @RestForm
    String ends;

    @RestForm
    String place;

    @RestForm
    String username;

    @RestForm
    String from;

    @RestForm
    String until;

    @RestForm
    String why;

    @RestForm
    String date;

    @RestForm
    String giver;

    @RestForm
    String taker;

    KeepingRota.NewTurn turn() {
        return new KeepingRota.NewTurn(Typed.fromOne(weekday), starts, ends, username, Typed.fromOne(place));
    }

    KeepingRota.NewAbsence absence() {
        return new KeepingRota.NewAbsence(username, from, until, why);
    }

    KeepingRota.NewSwap swap() {
        return new KeepingRota.NewSwap(date, giver, taker);
    }

    public boolean getTurnSent() {
        return "turn".equals(which);
    }

    public boolean getAbsenceSent() {
        return "absence".equals(which);
    }

    public boolean getSwapSent() {
        return "swap".equals(which);
    }

    public String getWeekday() {
        return weekday;
    }

    public String getStarts() {
        return starts;
    }

    public String getEnds() {
        return ends;
    }

    public String getPlace() {
        return place;
    }

    public String getUsername() {
        return username;
    }

    public String getFrom() {
        return from;
    }

    public String getUntil() {
        return until;
    }

    public String getWhy() {
        return why;
    }

    public String getDate() {
        return date;
    }

    public String getGiver() {
        return giver;
    }

    public String getTaker() {
        return taker;
    }
}
