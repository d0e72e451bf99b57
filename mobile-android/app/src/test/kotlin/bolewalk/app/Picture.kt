package bolewalk.app

import android.app.Activity
import android.graphics.Bitmap
import android.os.Handler
import android.os.Looper
import android.view.PixelCopy
import androidx.compose.ui.geometry.Rect
import java.io.ByteArrayOutputStream
import java.io.DataOutputStream
import java.io.File
import java.nio.ByteBuffer
import java.util.zip.CRC32
import java.util.zip.Deflater
import java.util.zip.DeflaterOutputStream
import javax.imageio.ImageIO
import kotlin.math.abs
import kotlin.math.ceil
import org.robolectric.Shadows.shadowOf

/** The window as the toolkit draws it for the glass. */
fun pictureOf(activity: Activity): Picture {
    val view = activity.window.decorView
    val bitmap = Bitmap.createBitmap(view.width, view.height, Bitmap.Config.ARGB_8888)
    var result = -1
    PixelCopy.request(activity.window, bitmap, { result = it }, Handler(Looper.getMainLooper()))
    shadowOf(Looper.getMainLooper()).idle()
    check(result == PixelCopy.SUCCESS) { "no picture: $result" }
    return Picture(bitmap.width, bitmap.height, IntArray(bitmap.width * bitmap.height).also {
        bitmap.getPixels(it, 0, bitmap.width, 0, 0, bitmap.width, bitmap.height)
        bitmap.recycle()
    })
}

/** Pixels as 0xAARRGGBB, line by line. */
class Picture(val width: Int, val height: Int, val pixels: IntArray) {
    operator fun get(x: Int, y: Int): Int = pixels[y * width + x]

    /** Half as wide and high, in at most [DEPTH] colours. */
    fun small(): Picture = halved().reduced()

    private fun halved(): Picture {
        val (w, h) = width / 2 to height / 2
        return Picture(w, h, IntArray(w * h) { at ->
            val (x, y) = at % w * 2 to at / w * 2
            val four = intArrayOf(this[x, y], this[x + 1, y], this[x, y + 1], this[x + 1, y + 1])
            colour { shift -> four.sumOf { it shr shift and 0xFF } / 4 }
        })
    }

    /** Every pixel in the nearest of the colours that cover most of it and differ in more than the shade of an edge.
     *  These stay as they are: on them contrast can be measured. */
    private fun reduced(): Picture {
        val alike = pixels.toList().groupingBy { it }.eachCount().entries.groupBy { (one, _) -> colour { one shr it and 0xF8 } }
        val shades = alike.values.sortedBy { shade -> -shade.sumOf { it.value } }
            .map { shade -> shade.sortedBy { it.key }.maxBy { it.value }.key }
        val kept = mutableListOf<Int>()
        for (one in shades) if (kept.size < DEPTH && kept.all { distance(one, it) >= APART * APART }) kept += one
        val nearest = alike.mapValues { (coarse, _) -> kept.minBy { distance(coarse, it) } }
        return Picture(width, height, IntArray(pixels.size) { at -> nearest.getValue(colour { pixels[at] shr it and 0xF8 }) })
    }

    /** Without what stands in a place: nothing but its commonest colour. */
    fun without(place: Rect): Picture {
        val columns = place.left.toInt()..ceil(place.right).toInt().coerceAtMost(width - 1)
        val rows = place.top.toInt()..ceil(place.bottom).toInt().coerceAtMost(height - 1)
        val ground = rows.flatMap { y -> columns.map { x -> this[x, y] } }.groupingBy { it }.eachCount().maxBy { it.value }.key
        return Picture(width, height, IntArray(pixels.size) { if (it % width in columns && it / width in rows) ground else pixels[it] })
    }

    /** How many pixels an eye would call different. */
    fun differs(other: Picture): Int {
        if (width != other.width || height != other.height) return maxOf(pixels.size, other.pixels.size)
        return pixels.indices.count { at -> CHANNELS.any { abs((pixels[at] shr it and 0xFF) - (other.pixels[at] shr it and 0xFF)) > SEEN } }
    }

    /** As PNG with a palette, two pixels a byte: every line as it is (its filters make palettes larger), packed as tightly
     *  as can be; a third of the toolkit's own. */
    fun write(file: File) {
        val colours = pixels.distinct().also { check(it.size <= DEPTH) { "${it.size} colours" } }
        val index = colours.withIndex().associate { (at, colour) -> colour to at }
        val lines = ByteArrayOutputStream()
        DeflaterOutputStream(lines, Deflater(Deflater.BEST_COMPRESSION)).use { out ->
            for (y in 0 until height) {
                out.write(0)
                for (x in 0 until width step 2) {
                    val second = if (x + 1 < width) index.getValue(this[x + 1, y]) else 0
                    out.write(index.getValue(this[x, y]) shl 4 or second)
                }
            }
        }
        val palette = ByteArray(colours.size * CHANNELS.size) { (colours[it / CHANNELS.size] shr CHANNELS[it % CHANNELS.size]).toByte() }
        val head = ByteBuffer.allocate(13).putInt(width).putInt(height).put(byteArrayOf(4, 3, 0, 0, 0)).array()
        file.parentFile?.mkdirs()
        DataOutputStream(file.outputStream()).use { out ->
            out.writeLong(SIGNATURE)
            out.part("IHDR", head).part("PLTE", palette).part("IDAT", lines.toByteArray()).part("IEND", ByteArray(0))
        }
    }

    private fun DataOutputStream.part(name: String, data: ByteArray) = apply {
        val body = name.toByteArray() + data
        writeInt(data.size)
        write(body)
        writeInt(CRC32().apply { update(body) }.value.toInt())
    }

    private fun colour(of: (shift: Int) -> Int) = CHANNELS.fold(0xFF shl 24) { all, shift -> all or (of(shift) shl shift) }

    private fun distance(one: Int, other: Int) = CHANNELS.sumOf { shift -> ((one shr shift and 0xFF) - (other shr shift and 0xFF)).let { it * it } }

    companion object {
        /** A difference of a channel that an eye sees. */
        private const val SEEN = 64

        /** As many colours as a small picture has, and how far apart: nearer than a card to its ground. */
        private const val DEPTH = 16
        private const val APART = 28
        private const val SIGNATURE = -0x76afb1b8f2f5e5f6L
        private val CHANNELS = intArrayOf(16, 8, 0).toList()

        fun read(file: File): Picture {
            val image = ImageIO.read(file)
            return Picture(image.width, image.height, image.getRGB(0, 0, image.width, image.height, null, 0, image.width))
        }
    }
}
