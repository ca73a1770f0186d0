package dev.lapwing.web;

import java.util.List;

/** Has something to say to coordinators on every page, until it is seen to. */
public interface Notices {
    /** One thing to see to, and the path of the page on which that is done. */
    record Notice(String words, String path, String link) {}

    /** Returns what there is to say now. Asked for with every page, so it must be quick. */
    List<Notice> now();
}
