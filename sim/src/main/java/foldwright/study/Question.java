// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/** The six questions of a maker; every check answers to one of them. */
public enum Question {
    FOLD("Does it leave the fold?", "It leaves the fold", "It does not leave the fold"),
    STAY("Does it stay up?", "It stays up", "It does not stay up"),
    LEAN(
            "How far does it lean?",
            "It leans no more than allowed",
            "It leans too far",
            "needs a gantry and measured.lateralStiffness"),
    SKEW("How far does it skew?", "It moves square", "It skews too far", "needs a gantry"),
    FIT("Does it fit the box?", "It fits the box", "It does not fit the box", "needs a box"),
    ORDER("What do I order?", "No part is over its rating", "A part is over its rating");

    private final String words;
    private final String yes;
    private final String no;
    private final String needs;

    Question(String words, String yes, String no) {
        this(words, yes, no, "");
    }

    Question(String words, String yes, String no, String needs) {
        this.needs = needs;
        this.words = words;
        this.yes = yes;
        this.no = no;
    }

    /** The question as the maker asks it. */
    public String words() {
        return words;
    }

    /** What a machine file must give before any check can answer; empty where nothing more. */
    public String needs() {
        return needs;
    }

    /** The finding in one sentence without its full stop. */
    public String finding(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> yes;
            case TIGHT -> yes + ", with little in reserve";
            case FAILS -> no;
            case UNKNOWN -> "Not known yet";
            case UNJUDGED -> "No limit is given to judge it by";
        };
    }
}
