// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

/** What happens when the ends of a spring move further apart than its free length. */
public enum Attachment {
    /** Both ends are fastened: the spring pulls back. */
    ATTACHED,
    /** One end merely rests: the spring lets go and gives no force. */
    TOUCHING
}
