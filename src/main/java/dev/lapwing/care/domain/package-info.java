/** Care rules and due work, as plain functions of facts and a date. No framework, no clock, no storage. */
package dev.lapwing.care.domain;
