/** Who changed what, kept so that it cannot be changed. Every area may write here; it uses none. */
package dev.lapwing.audit;
