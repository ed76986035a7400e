// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CsvTest {
    @Test
    void cellsWithCommasAndQuotesAreQuotedAsInRfc4180() {
        Csv csv = new Csv(List.of("a", "b [N·m]"));
        csv.row(List.of("say \"hi\", twice", "1"));
        assertThat(csv.text()).isEqualTo("a,b [N·m]\r\n\"say \"\"hi\"\", twice\",1\r\n");
    }

    @Test
    void numbersHaveNoPowersOfTen() {
        assertThat(Csv.number(1.23456789012e-7)).isEqualTo("0.000000123456789");
        assertThat(Csv.number(4.5e10)).isEqualTo("45000000000");
        assertThat(Csv.number(Double.POSITIVE_INFINITY)).isEqualTo("inf");
        assertThat(Csv.number(Double.NaN)).isEqualTo("nan");
        assertThat(Csv.number(-0.0)).isEqualTo("0");
    }

    /** Nine digits: the printed number is within half a unit of the ninth. */
    @Property
    void readBackWithinNineDigits(@ForAll @DoubleRange(min = -1e9, max = 1e9) double x) {
        double back = Double.parseDouble(Csv.number(x));
        assertThat(Math.abs(back - x)).isLessThanOrEqualTo(0.51e-8 * Math.abs(x));
    }
}
