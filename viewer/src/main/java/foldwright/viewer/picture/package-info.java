// SPDX-License-Identifier: Apache-2.0

/**
 * Pictures as files: PNG, films, animated glTF. A file is complete or absent: written beside and
 * moved into place.
 */
package foldwright.viewer.picture;
