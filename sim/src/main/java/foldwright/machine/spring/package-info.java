// SPDX-License-Identifier: Apache-2.0

/** Helper springs: their laws and where they are. Records only; no physics. */
package foldwright.machine.spring;
