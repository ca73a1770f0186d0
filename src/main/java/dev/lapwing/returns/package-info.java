/** Return reports, their readings, questions and strikes. May use fleet and reading. */
package dev.lapwing.returns;
