package bolewalk.app.device

import android.Manifest.permission.CAMERA
import android.app.Activity
import android.content.Intent
import android.content.pm.PackageManager
import android.net.Uri
import android.provider.MediaStore
import bolewalk.app.app
import bolewalk.book.CommandKind
import bolewalk.book.EntryValue
import bolewalk.book.Page
import java.io.ByteArrayInputStream
import java.io.File
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf

/** The camera app and the file picker, as the framework starts them and hears from them. */
@RunWith(RobolectricTestRunner::class)
class PhotosTest {
    private val path = File(app.filesDir, "taken/one.jpg").path

    /** A phone with the form of a new site open: what arrives goes into its draft. */
    private fun withForm(): OnPhone {
        val phone = OnPhone()
        phone.settle { phone.field.state.value.page != null }
        val page = phone.field.state.value.page as Page.Book
        phone.field.take(page.v1.offers.first { it.command == CommandKind.ADD_SITE })
        phone.field.await("photo.file", path)
        return phone
    }

    private fun OnPhone.drafted() = field.state.value.form?.draft?.get("photo.file")

    private fun OnPhone.asked(): Intent = shadowOf(window).nextStartedActivityForResult.intent

    @Test fun thePhotoLiesInAFileOfOurs() {
        shadowOf(app).grantPermissions(CAMERA)
        val phone = withForm()
        phone.device.camera.take(path)
        val asked = phone.asked()
        assertEquals(MediaStore.ACTION_IMAGE_CAPTURE, asked.action)
        @Suppress("DEPRECATION") val uri = asked.getParcelableExtra<Uri>(MediaStore.EXTRA_OUTPUT)!!
        assertEquals("content://bolewalk.app.files/taken/one.jpg", uri.toString())
        app.contentResolver.openOutputStream(uri)!!.use { it.write(byteArrayOf(1, 2, 3)) }
        shadowOf(phone.window).receiveResult(asked, Activity.RESULT_OK, null)
        phone.settle()
        assertEquals(EntryValue.PhotoFile(path), phone.drafted())
        assertEquals(3, File(path).length())
    }

    @Test fun turningBackFromTheCameraChangesNothing() {
        shadowOf(app).grantPermissions(CAMERA)
        val phone = withForm()
        phone.device.camera.take(path)
        shadowOf(phone.window).receiveResult(phone.asked(), Activity.RESULT_CANCELED, null)
        phone.settle()
        assertNull(phone.drafted())
        assertNull(phone.field.awaited())
        assertTrue(phone.field.state.value.form != null)
    }

    @Test fun theCameraIsAskedForWhenFirstNeededAndItsRefusalHasAWayOn() {
        val phone = withForm()
        assertNull(shadowOf(phone.window).lastRequestedPermission)
        phone.device.camera.take(path)
        val asked = shadowOf(phone.window).lastRequestedPermission
        assertEquals(listOf(CAMERA), asked.requestedPermissions.toList())
        phone.answer(asked.requestCode, asked.requestedPermissions, PackageManager.PERMISSION_DENIED)
        assertEquals(phone.field.words.cameraRefused, phone.said())
        // The way on needs no permission.
        phone.device.files.picture(path)
        val bytes = byteArrayOf(9, 8, 7)
        val picked = fileOfAnotherApp("oak.jpg", bytes.size) { ByteArrayInputStream(bytes) }
        shadowOf(phone.window).receiveResult(phone.askedPicker(), Activity.RESULT_OK, Intent().setData(picked))
        phone.settle { phone.drafted() != null }
        assertEquals(EntryValue.PhotoFile(path), phone.drafted())
        assertEquals(3, File(path).length())
    }

    private fun OnPhone.askedPicker(): Intent =
        generateSequence { shadowOf(window).nextStartedActivityForResult }.first { it.intent.action == Intent.ACTION_OPEN_DOCUMENT }.intent

    @Test fun thePickerGivesWhatItCanAndWordsForTheRest() {
        val phone = withForm()
        phone.device.files.any(path)
        val asked = phone.asked()
        assertEquals(Intent.ACTION_OPEN_DOCUMENT, asked.action)
        val huge = fileOfAnotherApp("film.mp4", 2L shl 30) { Endless() }
        shadowOf(phone.window).receiveResult(asked, Activity.RESULT_OK, Intent().setData(huge))
        phone.settle { phone.said() != null }
        assertEquals(phone.field.words.tooLarge, phone.said())
        assertNull(phone.drafted())
        assertTrue(phone.field.state.value.form != null)
    }

    @Test fun leftoversAreSweptAfterAWeek() {
        val (old, new) = listOf("old.jpg", "new.jpg").map { name -> File(app.filesDir, "taken/$name").apply { parentFile!!.mkdirs(); writeText("x") } }
        val now = System.currentTimeMillis()
        old.setLastModified(now - 8L * 24 * 3600 * 1000)
        sweepLeftovers(app, now)
        assertFalse(old.exists())
        assertTrue(new.exists())
        // A clock set back does not make them old.
        sweepLeftovers(app, now - 30L * 24 * 3600 * 1000)
        assertTrue(new.exists())
    }
}
