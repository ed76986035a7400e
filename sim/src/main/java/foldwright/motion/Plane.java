// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

/**
 * The plane of an arc. First, second and normal axis form a right-handed frame, so that a positive
 * sweep is counter-clockwise seen from the positive end of the normal (ISO 6983; NISTIR 6556, 2000,
 * section 3.5.3).
 */
public enum Plane {
    XY(0, 1, 2),
    ZX(2, 0, 1),
    YZ(1, 2, 0);

    private final int first;
    private final int second;
    private final int normal;

    Plane(int first, int second, int normal) {
        this.first = first;
        this.second = second;
        this.normal = normal;
    }

    public int first() {
        return first;
    }

    public int second() {
        return second;
    }

    public int normal() {
        return normal;
    }
}
