// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.study.Check;
import foldwright.study.Numerals;
import foldwright.study.Verdict;
import picocli.CommandLine.Help.Ansi;

/** Verdicts for a terminal: always mark and word, with colour only where it is wanted. */
final class Words {
    private Words() {}

    /** E.g. "● holds"; coloured when standard output is a terminal and NO_COLOR is not set. */
    static String verdict(Verdict verdict) {
        return colour(verdict, mark(verdict) + " " + verdict.word());
    }

    /** Name, verdict and margin of the check that a command is about. */
    static String headline(String name, Check check) {
        double margin = check.outcome().margin();
        String words = Numerals.margin(check.outcome());
        String how =
                Double.isNaN(margin)
                        ? ""
                        : Double.isInfinite(margin) ? ", " + words : ", margin " + words;
        return name + ": " + verdict(check.verdict()) + how;
    }

    private static String mark(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> "●";
            case TIGHT -> "◆";
            case FAILS -> "✕";
            case UNKNOWN, UNJUDGED -> "○";
        };
    }

    private static String colour(Verdict verdict, String words) {
        if (!Ansi.AUTO.enabled()) {
            return words;
        }
        String code =
                switch (verdict) {
                    case HOLDS -> "36";
                    case TIGHT -> "33";
                    case FAILS -> "1;35";
                    case UNKNOWN, UNJUDGED -> "2";
                };
        return "\u001b[" + code + "m" + words + "\u001b[0m";
    }
}
