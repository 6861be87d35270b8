package org.kitweft.kit;

/**
 * The full name of a sound in a kit, {@code surface.sound}: {@code hi-hat.open}. Only a name: the
 * kit tells what it stands for, see {@link Kit#find(String)}.
 *
 * @param surface the surface's id
 * @param sound the sound's id
 */
public record SoundName(String surface, String sound) implements Comparable<SoundName> {

    public SoundName {
        Ids.check("surface", surface);
        Ids.check("sound", sound);
    }

    /** The name as commands and files write it. */
    public String text() {
        return surface + "." + sound;
    }

    @Override
    public int compareTo(SoundName other) {
        return text().compareTo(other.text());
    }

    @Override
    public String toString() {
        return text();
    }
}
