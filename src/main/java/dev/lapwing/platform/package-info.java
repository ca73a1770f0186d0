/** What every area stands on: time, ids, the database driver, repeatable requests. Uses no other area. */
package dev.lapwing.platform;
