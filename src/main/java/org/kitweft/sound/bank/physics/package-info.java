/** What vibrates and how: membranes, bars, plates, air, and the contact of stick and surface. */
@NullMarked
package org.kitweft.sound.bank.physics;

import org.jspecify.annotations.NullMarked;
