/** Builds mails as they travel and hands them over, to a server or into a folder. */
package dev.lapwing.alerts.mail;
