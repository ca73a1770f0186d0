/** Use of the fleet, as plain rules: rental log, use pattern, season, yard gaps and the year strip. No framework. */
package dev.lapwing.use.domain;
