// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RankRuleTest {
    private final BlockPattern pattern = new BlockPattern();

    @Test
    void jointWaitsForABodyAndThenClaimsIt() {
        int a = pattern.addBody(6);
        int b = pattern.addBody(6);
        int first = joint(5, a, b);
        int second = joint(5, a, b);
        RankRule rule = new RankRule(pattern);
        assertThat(rule.eliminateJoint(first)).isFalse();
        rule.eliminateBody(a);
        assertThat(rule.eliminateJoint(first)).isTrue();
        // six columns carry one joint only, while b is there
        assertThat(rule.eliminateJoint(second)).isFalse();
        rule.eliminateBody(b);
        assertThat(rule.eliminateJoint(second)).isTrue();
    }

    /**
     * Crank, coupler, crank: 15 rows on the 12 columns of the first two bodies would leave pivots
     * of the size of the compliance, although each joint by itself finds a body or has lost all.
     */
    @Test
    void openEndOfALoopWaitsForTheNextCrank() {
        int crank = pattern.addBody(6);
        int coupler = pattern.addBody(6);
        int next = pattern.addBody(6);
        int foot = joint(5, crank);
        int left = joint(5, crank, coupler);
        int right = joint(5, coupler, next);
        RankRule rule = new RankRule(pattern);
        rule.eliminateBody(crank);
        assertThat(rule.eliminateJoint(foot)).isTrue();
        rule.eliminateBody(coupler);
        assertThat(rule.eliminateJoint(left)).isTrue();
        assertThat(rule.eliminateJoint(right)).isFalse();
        rule.eliminateBody(next);
        assertThat(rule.eliminateJoint(right)).isTrue();
    }

    /** A claim may be handed on: the first joint moves to its other body to make room. */
    @Test
    void claimsAreHandedOnAlongAChain() {
        int a = pattern.addBody(6);
        int b = pattern.addBody(6);
        int c = pattern.addBody(6);
        int ab = joint(5, a, b);
        int ac = joint(5, a, c);
        RankRule rule = new RankRule(pattern);
        rule.eliminateBody(a);
        assertThat(rule.eliminateJoint(ab)).isTrue();
        rule.eliminateBody(b);
        assertThat(rule.eliminateJoint(ac)).isTrue();
    }

    @Test
    void aRotorIsTooSmallForAHinge() {
        int rotor = pattern.addBody(1);
        int body = pattern.addBody(6);
        int hinge = joint(5, rotor, body);
        int gear = joint(1, rotor, body);
        RankRule rule = new RankRule(pattern);
        rule.eliminateBody(rotor);
        assertThat(rule.eliminateJoint(hinge)).isFalse();
        assertThat(rule.eliminateJoint(gear)).isTrue();
    }

    @Test
    void jointWithoutBodiesMayGoAtOnce() {
        int lonely = pattern.addJoint(2);
        assertThat(new RankRule(pattern).eliminateJoint(lonely)).isTrue();
    }

    private int joint(int rows, int... bodies) {
        int joint = pattern.addJoint(rows);
        for (int b : bodies) {
            pattern.couple(joint, b);
        }
        return joint;
    }
}
